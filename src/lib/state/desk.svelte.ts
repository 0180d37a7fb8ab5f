/** The children on the desk: which one is open, what was done, undone, and kept. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import { caseText, parseCaseText } from '../case/file.ts';
import { parseRaw } from '../case/parse.ts';
import { refused, type Parsed } from '../case/problem.ts';
import type { RawCase, RawChild, RawFollowUp, RawVisit } from '../case/shape.ts';
import type { Change, Rows } from '../store/rows.ts';
import type { Kept, Unread } from '../store/store.ts';
import {
  mergeKept,
  problemsById,
  recordsOf,
  replayed,
  settledKept,
  settledRecords,
} from './clash.ts';
import type { Did, Told } from './did.ts';
import { Drafts } from './drafts.svelte.ts';
import {
  newRaw,
  numberOf,
  rawVisit,
  withChild,
  withFollowUp,
  withoutVisit,
  withVisit,
} from './edits.ts';
import { isExample } from './examples/ids.ts';
import { History } from './history.svelte.ts';
import { newId } from './ids.ts';
import { Keeping } from './keeping.svelte.ts';
import { typedOver } from './overtaken.ts';
import { goneFromCase } from './parts.ts';
import { Sitting } from './sitting.ts';
import { Sync } from './sync.ts';
import type { Left } from './unwritten.ts';

/** All that undo goes back over. */
interface Desktop {
  shelf: readonly Kept[];
  openId: string | undefined;
}

/** What is answered to a change where the store is of a newer Tidemark. */
const READ_ONLY = refused({ code: 'read-only', at: { field: 'file' } });

export class Desk {
  #top = $state.raw<Desktop>({ shelf: [], openId: undefined });
  unread = $state.raw<readonly Unread[]>([]);
  told = $state.raw<Told | undefined>(undefined);
  /** Where records are kept; undefined until the store has answered. */
  keeping = $state<Rows['kind'] | undefined>(undefined);
  readonly history = new History<Desktop, Did>();
  /** What is typed in of a visit and cannot be kept yet. */
  readonly drafts: Drafts;
  readonly #atlas: Atlas;
  readonly #problems = problemsById();
  readonly #sitting = new Sitting();
  readonly #sync: Sync<Case>;

  constructor(
    atlas: Atlas,
    first: readonly Kept[],
    openId: string | undefined,
    keeping = new Keeping(),
  ) {
    this.#atlas = atlas;
    this.drafts = new Drafts(this, atlas);
    this.#top = { shelf: first, openId: openId ?? first[0]?.id };
    this.#sync = new Sync<Case>(
      {
        table: 'cases',
        write: caseText,
        read: (id, text) => this.#read(id, text),
        merge: (both) => mergeKept(both, atlas),
        gone: (before, after, id) =>
          goneFromCase(before, after, (part) => this.#sitting.isFresh(id, part, part.finding)),
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
    return this.#top.shelf;
  }

  get open(): Kept | undefined {
    return this.shelf.find((kept) => kept.id === this.#top.openId) ?? this.shelf[0];
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
    const next = { ...this.#top, shelf: settledKept(this.shelf, children) };
    if (!this.#become(next, did, stroke)) return false;
    this.#sync.ask(beside, () => {
      const now = recordsOf(this.shelf);
      return children.some(({ id }) => now.get(id) !== before.get(id));
    });
    return true;
  }

  openChild(id: string): void {
    this.#top = { ...this.#top, openId: id };
  }

  addChild(child: RawChild): Parsed<Case> {
    return this.#added(parseRaw(newRaw(child), this.#atlas), 'child-added');
  }

  /** Takes a record that came in a file as a new child. */
  addRecord(record: Case): Parsed<Case> {
    return this.#added({ ok: true, value: record }, 'file-opened');
  }

  /** Records put in place of those with their ids, or beside the others, in one step; the first is opened. */
  takeRecords(records: readonly Kept[]): void {
    const [first] = records;
    if (!first) return;
    const shelf = settledKept(this.shelf, records);
    this.#become({ shelf, openId: first.id }, 'records-taken');
  }

  changeChild(child: RawChild): Parsed<Case> {
    return this.#changed((record) => withChild(record, child), 'child-changed');
  }

  /** The record as it would be with other details; nothing is changed. */
  wouldBe(child: RawChild): Parsed<Case> {
    const { open } = this;
    return open
      ? parseRaw(withChild(open.record, child), this.#atlas)
      : refused({ code: 'missing', at: { field: 'child' } });
  }

  /** Changes what surrounds the visits: of the open child, or of the one named. */
  follow(change: RawFollowUp, did: Did, id?: string, stroke?: number): Parsed<Case> {
    return this.#changed((record) => withFollowUp(record, change), did, id, stroke);
  }

  removeChild(id: string): void {
    this.#without((kept) => kept.id === id, 'child-removed');
  }

  /** A copy of a child under another label, out of the archive; the open child stays open. */
  duplicate(id: string, label: string): Parsed<Case> {
    const from = this.shelf.find((kept) => kept.id === id);
    if (!from) return refused({ code: 'missing', at: { field: 'child' } });
    // what a family is told is one child's own: a copy may be made for a twin
    const raw = withFollowUp(from.record, { archived: false });
    delete raw.family;
    const parsed = parseRaw({ ...raw, child: { ...raw.child, label } }, this.#atlas);
    if (!parsed.ok) return parsed;
    const shelf = [...this.shelf, { id: newId(), record: parsed.value }];
    return this.#become({ ...this.#top, shelf }, 'duplicated') ? parsed : READ_ONLY;
  }

  /** Puts invented children beside the others; one that is here already stays as it is. */
  addExamples(examples: readonly Kept[]): void {
    const fresh = examples.filter(({ id }) => !this.shelf.some((kept) => kept.id === id));
    if (fresh.length === 0) return;
    this.#become({ ...this.#top, shelf: [...this.shelf, ...fresh] }, 'examples-added');
  }

  clearExamples(): void {
    this.#without(({ id }) => isExample(id), 'examples-cleared');
  }

  /** Adds a visit, or puts it in place of the one with that number; answers with its number. */
  putVisit(number: number | undefined, visit: RawVisit, stroke?: number): Parsed<number> {
    const did = number === undefined ? 'visit-added' : 'visit-changed';
    const { open } = this;
    const edit = (record: Case): RawCase => withVisit(record, number, visit);
    const parsed = this.#changed(edit, did, open?.id, stroke);
    if (!parsed.ok || !open) return parsed.ok ? READ_ONLY : parsed;
    const value = numberOf(parsed.value, visit);
    const before = number === undefined ? undefined : rawVisit(open.record, number);
    const after = rawVisit(parsed.value, value);
    if (after) this.#sitting.wrote(open.id, before, after);
    return { ok: true, value };
  }

  /**
   * Words that were typed over an earlier reading, while something else came to stand there: like two
   * changes in two windows, both are kept, and which is right is asked.
   */
  typedOver(before: (record: Case) => RawCase, after: (record: Case) => RawCase): Parsed<Case> {
    const { open } = this;
    if (!open) return refused({ code: 'missing', at: { field: 'child' } });
    if (this.keeping === 'newer') return READ_ONLY;
    const { parsed, beside } = typedOver(open, before, after, this.#atlas);
    this.#sync.ask(beside);
    return parsed;
  }

  removeVisit(number: number): Parsed<Case> {
    return this.#changed((record) => withoutVisit(record, number), 'visit-removed');
  }

  undo(): void {
    const step = this.history.undo();
    if (!step) return;
    this.#put(this.#over(step));
    this.#tell('undid', step.did);
  }

  redo(): void {
    const step = this.history.redo();
    if (!step) return;
    this.#put(this.#over(step));
    this.#tell('redid', step.did);
  }

  /** The sentence about the last change has been read. */
  hush(): void {
    this.told = undefined;
  }

  #without(goes: (kept: Kept) => boolean, did: Did): void {
    const shelf = this.shelf.filter((kept) => !goes(kept));
    const openId = shelf.find(({ id }) => id === this.#top.openId)?.id ?? shelf[0]?.id;
    this.#become({ shelf, openId }, did);
  }

  #added(parsed: Parsed<Case>, did: Did): Parsed<Case> {
    if (!parsed.ok) return parsed;
    const id = newId();
    const shelf = [...this.shelf, { id, record: parsed.value }];
    return this.#become({ shelf, openId: id }, did) ? parsed : READ_ONLY;
  }

  #changed(
    edit: (record: Case) => RawCase,
    did: Did,
    id = this.open?.id,
    stroke?: number,
  ): Parsed<Case> {
    const open = this.shelf.find((kept) => kept.id === id);
    if (!open) return refused({ code: 'missing', at: { field: 'child' } });
    const parsed = parseRaw(edit(open.record), this.#atlas);
    if (!parsed.ok) return parsed;
    const changed = { id: open.id, record: parsed.value };
    const shelf = this.shelf.map((kept) => (kept.id === open.id ? changed : kept));
    return this.#become({ ...this.#top, shelf }, did, stroke) ? parsed : READ_ONLY;
  }

  /** Makes a change that can be undone; says no where the store is of a newer Tidemark. */
  #become(next: Desktop, did: Did, stroke?: number): boolean {
    if (this.keeping === 'newer') return false;
    const isOnward = stroke !== undefined && stroke === this.history.lastStroke;
    this.history.record(this.#top, next, did, stroke);
    this.#put(next);
    if (!isOnward) this.#tell('did', did); // words that are typed on are told of once
    return true;
  }

  #tell(what: Told['what'], did: Did): void {
    this.told = { what, did, count: (this.told?.count ?? 0) + 1 };
  }

  /** A step back or forth, over what has come from other windows since. */
  #over({ from, value }: { from: Desktop; value: Desktop }): Desktop {
    const shelf = replayed(from.shelf, value.shelf, this.shelf, this.#atlas);
    const isThere = shelf.some(({ id }) => id === value.openId);
    return { shelf, openId: isThere ? value.openId : shelf[0]?.id };
  }

  /** Shows a state; what differs from the store is written. */
  #put(next: Desktop): void {
    this.#top = next;
    this.#sync.changed();
  }

  #read(id: string, text: string): Case | undefined {
    const parsed = parseCaseText(text, this.#atlas);
    if (parsed.ok) this.#problems.delete(id);
    else this.#problems.set(id, parsed.problems);
    return parsed.ok ? parsed.value : undefined;
  }

  /** What another window did is shown, and undo goes on over it. */
  #settle(records: ReadonlyMap<string, Case | undefined>): void {
    this.#top = { ...this.#top, shelf: settledRecords(this.shelf, records) };
  }
}
