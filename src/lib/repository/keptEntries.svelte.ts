/** Entries of one's own in one table of the store: shown, kept, and every change of them undone in turn. */
import type { Change, Rows } from '../store/rows.ts';
import { History } from '../platform/history.svelte.ts';
import type { Keeping } from './saveStatus.svelte.ts';
import { byId, settled, stepped } from '../platform/lists.ts';
import type { Shape } from './entryKind.ts';
import { Sync } from './sync.ts';
import type { Left } from './unwritten.ts';

/** What one table holds, and how it is written and read. */
type Table<T> = Pick<Shape<T>, 'table' | 'write' | 'read' | 'gone' | 'ready'>;

/** What is done to every kind of entry. */
type Always = 'removed' | 'brought-back';

export class OwnKept<T extends { id: string }, Own extends string> {
  #entries = $state.raw<readonly T[]>([]);
  /** Ids of stored rows that are not understood: left as they are. */
  damaged = $state.raw<readonly string[]>([]);
  /** `stays`: part of what was to be undone was changed in another window since, and is left. */
  told = $state.raw<{ did: Own | Always; undone: boolean; stays: boolean } | undefined>(undefined);
  readonly history = new History<readonly T[], Own | Always>();
  readonly #keeping: Keeping;
  readonly #text: (entry: T) => string;
  readonly #sync: Sync<T>;

  /** `newId`: the name of an entry that is added. */
  constructor(table: Table<T>, newId: () => string, keeping: Keeping) {
    this.#keeping = keeping;
    this.#text = table.write;
    this.#sync = new Sync<T>(
      {
        ...table,
        // of two changes to one entry neither is lost: the one made here becomes an entry of its own
        merge: ({ mine, theirs }) => {
          if (!mine || !theirs) return { value: mine ?? theirs };
          const id = newId();
          return { value: theirs, also: { id, value: { ...mine, id } } };
        },
        shown: () => byId(this.#entries),
        settle: (entries) => (this.#entries = settled(this.#entries, entries)),
        wasRead: () => (this.damaged = this.#sync.unread),
      },
      keeping,
    );
  }

  get entries(): readonly T[] {
    return this.#entries;
  }

  /** Settles when all that was changed is written, or was refused. */
  get written(): Promise<void> {
    return this.#sync.written;
  }

  /** What goes into a backup, and how much of it is new since the last. */
  get backed(): Pick<Sync<T>, 'texts' | 'look' | 'changedSince'> {
    return this.#sync;
  }

  /** Whether the last write was refused. */
  get refusedWrite(): boolean {
    return this.#keeping.troubleOf(this.#sync) !== undefined;
  }

  /** Takes what the store holds. */
  load(rows: Rows): Promise<void> {
    return this.#sync.load(rows);
  }

  /** What is not written yet. */
  unwritten(): Left {
    return this.#sync.unwritten();
  }

  /** Takes in what a page that has gone could not write any more, over what has come since. */
  catchUp(left: Left): Promise<void> {
    return this.#sync.catchUp(left);
  }

  remove(id: string): void {
    this.become(
      this.#entries.filter((entry) => entry.id !== id),
      'removed',
    );
  }

  undo(): void {
    this.#step(this.history.undo(), true);
  }

  redo(): void {
    this.#step(this.history.redo(), false);
  }

  hush(): void {
    this.told = undefined;
  }

  /** Entries beside or in place of those here, as one change; `beside` is written with it, and not if it is undone before. */
  protected bringIn(
    entries: readonly T[],
    stroke?: number,
    beside: readonly Change[] = [],
  ): boolean {
    if (entries.length === 0) return true;
    const before = byId(this.#entries);
    if (!this.become(settled(this.#entries, byId(entries)), 'brought-back', stroke)) return false;
    this.#sync.ask(beside, () => {
      const now = byId(this.#entries);
      return entries.some(({ id }) => now.get(id) !== before.get(id));
    });
    return true;
  }

  /** Makes a change that can be undone; says no where the store is of a newer Tidemark. */
  protected become(next: readonly T[], did: Own | Always, stroke?: number): boolean {
    if (this.#keeping.kind === 'newer') return false;
    this.history.record(this.#entries, next, did, stroke);
    this.#write(next);
    this.told = { did, undone: false, stays: false };
    return true;
  }

  #step(step: ReturnType<typeof this.history.undo>, undone: boolean): void {
    if (!step) return;
    const { list, stays } = stepped(step, this.#entries, (a, b) => this.#text(a) === this.#text(b));
    this.#write(list);
    this.told = { did: step.did, undone, stays };
  }

  /** Shows a state; what differs from the store is written. */
  #write(next: readonly T[]): void {
    this.#entries = next;
    this.#sync.changed();
  }
}
