/** The children as they are kept: shown, in step with the store, each change undone and done again. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import type { parseCaseText } from '../case/file.ts';
import { caseText } from '../case/raw.ts';
import type { Change, Rows } from '../store/rows.ts';
import type { Kept, Unread } from '../store/store.ts';
import {
  mergeKept,
  problemsById,
  recordsOf,
  replayed,
  settledKept,
  settledRecords,
} from './conflicts.ts';
import type { Did, Told } from './changeKind.ts';
import { History } from '../platform/history.svelte.ts';
import { Keeping } from './saveStatus.svelte.ts';
import { withOwnIds } from './freshIds.ts';
import { goneFromCase } from './parts.ts';
import { Sitting } from './recentEdits.ts';
import { Sync } from './sync.ts';
import type { Left } from './unwritten.ts';

/** All that undo goes back over. */
export interface Desktop {
  shelf: readonly Kept[];
  openId: string | undefined;
}

export class DeskKept {
  protected top = $state.raw<Desktop>({ shelf: [], openId: undefined });
  unread = $state.raw<readonly Unread[]>([]);
  told = $state.raw<Told | undefined>(undefined);
  /** Where records are kept; undefined until the store has answered. */
  keeping = $state<Rows['kind'] | undefined>(undefined);
  readonly history = new History<Desktop, Did>();
  /** What was recorded within the hour: that it goes again is a correction, and fills no bin. */
  protected readonly sitting = new Sitting();
  protected readonly atlas: Atlas;
  readonly #problems = problemsById();
  /** Reads a stored text: fetched before the first one is read, since the first view needs none of it. */
  #parse: typeof parseCaseText | undefined;
  readonly #sync: Sync<Case>;

  constructor(
    atlas: Atlas,
    first: readonly Kept[],
    openId: string | undefined,
    keeping = new Keeping(),
  ) {
    this.atlas = atlas;
    this.top = { shelf: first, openId: openId ?? first[0]?.id };
    this.#sync = new Sync<Case>(
      {
        table: 'cases',
        write: caseText,
        ready: async () => (this.#parse ??= (await import('../case/file.ts')).parseCaseText),
        read: (id, text) => this.#read(id, text),
        merge: (both) => mergeKept(both, atlas),
        gone: (before, after, id) =>
          goneFromCase(before, after, (part) => this.sitting.isFresh(id, part, part.finding)),
        shown: () => recordsOf(this.shelf),
        settle: (records) => this.#settle(records),
        wasRead: () => {
          const unread = this.#sync.unread.map((id) => ({
            id,
            problems: this.#problems.get(id) ?? [],
          }));
          if (unread.length > 0 || this.unread.length > 0) this.unread = unread;
        },
      },
      keeping,
    );
    this.#sync.expect(recordsOf(first));
  }

  get shelf(): readonly Kept[] {
    return this.top.shelf;
  }

  get open(): Kept | undefined {
    return this.shelf.find((kept) => kept.id === this.top.openId) ?? this.shelf[0];
  }

  /** Settles when all that was changed is written, or was refused. */
  get written(): Promise<void> {
    return this.#sync.written;
  }

  /** Takes what the store holds in place of what the desk began with. */
  async load(rows: Rows): Promise<void> {
    await this.#sync.load(rows);
    this.keeping = rows.kind;
  }

  /** What goes into a backup, and how much of it is new since the last. */
  get backed(): Pick<Sync<Case>, 'texts' | 'look' | 'changedSince'> {
    return this.#sync;
  }

  /** What is not written yet. */
  unwritten(): Left {
    return this.#sync.unwritten();
  }

  /** Takes in what a page that has gone could not write any more, over what has come since. */
  catchUp(left: Left): Promise<void> {
    return this.#sync.catchUp(left);
  }

  /** Takes children in beside or in place of those here, as one change; `beside` is written with it, and not if it is undone before. */
  takeIn(
    children: readonly Kept[],
    did: 'brought-back' | 'backup-taken' | 'clash-decided',
    stroke?: number,
    beside: readonly Change[] = [],
  ): boolean {
    const before = recordsOf(this.shelf);
    const next = {
      ...this.top,
      shelf: settledKept(this.shelf, withOwnIds(children, this.shelf)),
    };
    if (!this.become(next, did, stroke)) return false;
    this.#sync.ask(beside, () => {
      const now = recordsOf(this.shelf);
      return children.some(({ id }) => now.get(id) !== before.get(id));
    });
    return true;
  }

  undo(): void {
    const step = this.history.undo();
    if (!step) return;
    this.#step('undid', step);
  }

  redo(): void {
    const step = this.history.redo();
    if (!step) return;
    this.#step('redid', step);
  }

  /** The sentence about the last change has been read. */
  hush(): void {
    this.told = undefined;
  }

  /** Makes a change that can be undone; says no where the store is of a newer Tidemark. */
  protected become(next: Desktop, did: Did, stroke?: number): boolean {
    if (this.keeping === 'newer') return false;
    const isOnward = stroke !== undefined && stroke === this.history.lastStroke;
    this.history.record(this.top, next, did, stroke);
    this.#put(next);
    if (!isOnward) this.#tell('did', did); // words that are typed on are told of once
    return true;
  }

  /** Writes rows beside the records, such as what is to be asked. */
  protected ask(rows: readonly Change[]): void {
    this.#sync.ask(rows);
  }

  #tell(what: Told['what'], did: Did, stays = false): void {
    this.told = { what, did, count: (this.told?.count ?? 0) + 1, stays };
  }

  /** A step back or forth, over what has come from other windows since. */
  #step(what: 'undid' | 'redid', step: { from: Desktop; value: Desktop; did: Did }): void {
    const { from, value, did } = step;
    const { shelf, stays } = replayed(from.shelf, value.shelf, this.shelf, this.atlas);
    const isThere = shelf.some(({ id }) => id === value.openId);
    this.#put({ shelf, openId: isThere ? value.openId : shelf[0]?.id });
    this.#tell(what, did, stays);
  }

  /** Shows a state; what differs from the store is written. */
  #put(next: Desktop): void {
    this.top = next;
    this.#sync.changed();
  }

  #read(id: string, text: string): Case | undefined {
    const parsed = this.#parse!(text, this.atlas, id);
    if (parsed.ok) this.#problems.delete(id);
    else this.#problems.set(id, parsed.problems);
    return parsed.ok ? parsed.value : undefined;
  }

  /** What another window did is shown, and undo goes on over it. */
  #settle(records: ReadonlyMap<string, Case | undefined>): void {
    this.top = { ...this.top, shelf: settledRecords(this.shelf, records) };
  }
}
