/** The children on the desk: which one is open, and what is done with them. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import { parseRaw } from '../case/parse.ts';
import { refused, type Parsed } from '../case/problem.ts';
import type { RawCase, RawChild, RawFollowUp, RawVisit } from '../case/shape.ts';
import type { Kept } from '../store/store.ts';
import { settledKept } from './conflicts.ts';
import { DeskKept } from './keptCases.svelte.ts';
import type { Did } from './changeKind.ts';
import { Drafts } from './visitDrafts.svelte.ts';
import { newRaw, rawVisit, withChild, withFollowUp, withoutVisit, withVisit } from './edits.ts';
import { isExample } from '../platform/exampleIds.ts';
import { newId } from '../platform/ids.ts';
import type { Keeping } from './saveStatus.svelte.ts';
import { typedOver } from './typedOver.ts';
import { withOwnIds } from './freshIds.ts';

/** What is answered to a change where the store is of a newer Tidemark. */
const READ_ONLY = refused({ code: 'read-only', at: { field: 'file' } });

export class Desk extends DeskKept {
  /** What is typed in of a visit and cannot be kept yet. */
  readonly drafts: Drafts;

  constructor(atlas: Atlas, first: readonly Kept[], openId: string | undefined, keeping?: Keeping) {
    super(atlas, first, openId, keeping);
    this.drafts = new Drafts(this, atlas);
  }

  openChild(id: string): void {
    this.top = { ...this.top, openId: id };
  }

  addChild(child: RawChild): Parsed<Case> {
    return this.#added(parseRaw(newRaw(child), this.atlas), 'child-added');
  }

  /** Takes a record that came in a file as a new child. */
  addRecord(record: Case): Parsed<Case> {
    return this.#added({ ok: true, value: record }, 'file-opened');
  }

  /** Records put in place of those with their ids, or beside the others, in one step; the first is opened. */
  takeRecords(records: readonly Kept[]): void {
    const [first] = records;
    if (!first) return;
    const shelf = settledKept(this.shelf, withOwnIds(records, this.shelf));
    this.become({ shelf, openId: first.id }, 'records-taken');
  }

  changeChild(child: RawChild): Parsed<Case> {
    return this.#changed((record) => withChild(record, child), 'child-changed');
  }

  /** The record as it would be with other details; nothing is changed. */
  wouldBe(child: RawChild): Parsed<Case> {
    const { open } = this;
    return open
      ? parseRaw(withChild(open.record, child), this.atlas)
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
    const parsed = parseRaw({ ...raw, child: { ...raw.child, label } }, this.atlas);
    if (!parsed.ok) return parsed;
    const copy = { id: newId(), record: parsed.value };
    const shelf = [...this.shelf, ...withOwnIds([copy], this.shelf)];
    return this.become({ ...this.top, shelf }, 'duplicated') ? parsed : READ_ONLY;
  }

  /** Puts invented children beside the others; one that is here already stays as it is. */
  addExamples(examples: readonly Kept[]): void {
    const fresh = examples.filter(({ id }) => !this.shelf.some((kept) => kept.id === id));
    if (fresh.length === 0) return;
    this.become({ ...this.top, shelf: [...this.shelf, ...fresh] }, 'examples-added');
  }

  clearExamples(): void {
    this.#without(({ id }) => isExample(id), 'examples-cleared');
  }

  /** Adds a visit, or puts it in place of the one with its id. */
  putVisit(visit: RawVisit, stroke?: number): Parsed<Case> {
    const { open } = this;
    const before = open && rawVisit(open.record, visit.id);
    const edit = (record: Case): RawCase => withVisit(record, visit);
    const parsed = this.#changed(edit, before ? 'visit-changed' : 'visit-added', open?.id, stroke);
    if (!parsed.ok || !open) return parsed;
    const after = rawVisit(parsed.value, visit.id);
    if (after) this.sitting.wrote(open.id, before, after);
    return parsed;
  }

  /**
   * Words that were typed over an earlier reading, while something else came to stand there: like two
   * changes in two windows, both are kept, and which is right is asked.
   */
  typedOver(before: (record: Case) => RawCase, after: (record: Case) => RawCase): Parsed<Case> {
    const { open } = this;
    if (!open) return refused({ code: 'missing', at: { field: 'child' } });
    if (this.keeping === 'newer') return READ_ONLY;
    const { parsed, beside } = typedOver(open, before, after, this.atlas);
    this.ask(beside);
    return parsed;
  }

  removeVisit(id: string): Parsed<Case> {
    return this.#changed((record) => withoutVisit(record, id), 'visit-removed');
  }

  #without(goes: (kept: Kept) => boolean, did: Did): void {
    const shelf = this.shelf.filter((kept) => !goes(kept));
    const openId = shelf.find(({ id }) => id === this.top.openId)?.id ?? shelf[0]?.id;
    this.become({ shelf, openId }, did);
  }

  #added(parsed: Parsed<Case>, did: Did): Parsed<Case> {
    if (!parsed.ok) return parsed;
    const id = newId();
    const shelf = [...this.shelf, ...withOwnIds([{ id, record: parsed.value }], this.shelf)];
    return this.become({ shelf, openId: id }, did) ? parsed : READ_ONLY;
  }

  #changed(
    edit: (record: Case) => RawCase,
    did: Did,
    id = this.open?.id,
    stroke?: number,
  ): Parsed<Case> {
    const open = this.shelf.find((kept) => kept.id === id);
    if (!open) return refused({ code: 'missing', at: { field: 'child' } });
    const parsed = parseRaw(edit(open.record), this.atlas);
    if (!parsed.ok) return parsed;
    const changed = { id: open.id, record: parsed.value };
    const shelf = this.shelf.map((kept) => (kept.id === open.id ? changed : kept));
    return this.become({ ...this.top, shelf }, did, stroke) ? parsed : READ_ONLY;
  }
}
