/** What a sheet would add, before anything is: findings to visits, visits to children, children. */
import type { CivilDate } from '../../age/civil.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { Side } from '../../atlas/types.ts';
import { MAX_VISITS, type RawFinding } from '../../case/shape.ts';
import type { Kept } from '../../store/store.ts';
import { Cells } from './cells.ts';
import { Children } from './children.ts';
import type { SheetField } from './columns.ts';
import { grown, visitKey, type Draft, type DraftVisit, type PlannedChild } from './applyPlan.ts';
import { columnOf, linesOf, wordOf, type Line, type Mapping } from './lines.ts';
import type { CellFault, CellProblem } from './problems.ts';
import type { Sheet, SheetRow } from './read.ts';
import { LEAVE, sidesOf } from './values.ts';

export interface SheetPlan {
  children: readonly PlannedChild[];
  /** The first so many that are wrong, of those that are wrong alike only one: nobody mends more at once. */
  problems: readonly CellProblem[];
  /** How many are wrong altogether. */
  wrong: number;
  /** Findings that are here already, the same. */
  same: number;
  /** Lines left out by the reader's choice: rows, or answers where a row is a visit. */
  left: number;
  /** Rows of visits in which no reflex has an answer. */
  unanswered: number;
}

/** What is there already when a sheet is read. */
export interface Around {
  atlas: Atlas;
  shelf: readonly Kept[];
  /** The child that is open: whose the rows are where no column names one. */
  open: Kept | undefined;
  today: CivilDate;
  /** A uuid by chance, for each new visit. */
  newId: () => string;
}

/** What every line of a row has in common. */
interface Head {
  row: SheetRow;
  on: CivilDate | undefined;
  draft: Draft | undefined;
  isSound: boolean;
}

class Planner {
  readonly cells: Cells;
  readonly children: Children;
  same = 0;
  left = 0;
  #head: Head | undefined;
  readonly #mapping: Mapping;
  readonly #atlas: Atlas;
  readonly #today: CivilDate;
  readonly #newId: () => string;

  constructor(mapping: Mapping, { atlas, shelf, open, today, newId }: Around) {
    this.#newId = newId;
    this.cells = new Cells(mapping, atlas);
    const isNamed = mapping.columns.child !== undefined;
    this.children = new Children(this.cells, shelf, isNamed, open);
    this.#mapping = mapping;
    this.#atlas = atlas;
    this.#today = today;
  }

  /** The visit and the child of a row, read once for all its lines. */
  head(line: Line): Head {
    const { row } = line;
    if (this.#head?.row === row) return this.#head;
    const before = this.cells.wrong;
    const [on, draft] = [this.cells.date(line, 'date'), this.children.of(line)];
    if (on && draft) {
      const [examiner, note] = [this.cells.text(line, 'examiner'), this.cells.text(line, 'note')];
      this.cells.isTaken(line, draft.raw.child, { on, examiner, note });
    }
    return (this.#head = { row, on, draft, isSound: this.cells.wrong === before });
  }

  add(line: Line): void {
    const words = {
      reflex: wordOf(line, 'reflex', this.#mapping),
      response: wordOf(line, 'response', this.#mapping),
      side: wordOf(line, 'side', this.#mapping),
      state: wordOf(line, 'state', this.#mapping),
    };
    if (Object.values(words).includes(LEAVE)) {
      this.left++;
      return;
    }
    const faults: [SheetField, CellFault][] = [];
    for (const kind of ['reflex', 'response', 'side', 'state'] as const) {
      if (words[kind] !== undefined) continue;
      const text = this.cells.text(line, kind);
      if (text !== '') faults.push([kind, { code: 'undecided', text: text.slice(0, 60) }]);
      else if (kind === 'reflex' || kind === 'response') faults.push([kind, { code: 'empty' }]);
    }
    const { on, draft, isSound } = this.head(line);
    const { reflex = '', response = '' } = words;
    const known = this.#atlas.reflexes.get(reflex);
    const has: Side[] = [
      ...(known?.testedPerSide ? (['left', 'right'] as const) : []),
      ...(known?.midline ? (['midline'] as const) : []),
    ];
    const sides = sidesOf(words.side, has);
    const isSideUndecided = words.side === undefined && this.cells.text(line, 'side') !== '';
    if (known && !isSideUndecided && !sides?.every((side) => has.includes(side)))
      faults.push(['side', { code: 'no-side', reflex: known.name, has }]);
    const columns =
      faults.length > 1 ? faults.map(([field]) => columnOf(line, field, this.#mapping)) : [];
    for (const [index, [field, fault]] of faults.entries())
      // of two things that are wrong in a cell the first is told
      if (index === 0 || columns.indexOf(columns[index]) === index)
        this.cells.refuse(line, field, fault);
    if (!on || !draft || !sides || faults.length > 0 || !isSound) return;
    const visit = this.visit(line, draft, on);
    if (!visit) return;
    for (const side of sides)
      this.put(line, draft, visit, {
        reflex,
        side,
        response,
        state: words.state ?? 'not-recorded',
        // a row that is a visit has a note of the visit
        note: line.answers ? '' : this.cells.text(line, 'note'),
      });
  }

  /** The visit of a line, here or new; undefined where the record takes no more. */
  visit(line: Line, draft: Draft, on: CivilDate): DraftVisit | undefined {
    const examiner = this.cells.text(line, 'examiner');
    const key = visitKey(on, examiner);
    let visit = draft.visits.get(key);
    if (!visit) {
      const here = draft.raw.visits.find((one) => one.on === on && one.examiner === examiner);
      if (!here && draft.room === 0)
        return this.cells.refuse(line, 'date', { code: 'too-many-visits', limit: MAX_VISITS });
      if (!here) draft.room--;
      const [old, note, isHere] = [here?.findings ?? [], here?.note ?? '', here !== undefined];
      const isAhead = !isHere && on > this.#today;
      const id = here?.id ?? this.#newId();
      visit = { id, on, examiner, note, isHere, isAhead, old, added: [], line };
      draft.visits.set(key, visit);
    }
    if (line.answers) this.note(line, visit);
    return visit;
  }

  put(line: Line, { lineOf }: Draft, visit: DraftVisit, finding: RawFinding): void {
    const alike = (one: RawFinding): boolean =>
      one.reflex === finding.reflex && one.side === finding.side;
    const recorded = visit.old.find(alike);
    const added = visit.added.find(alike);
    if (recorded && recorded.response === finding.response) this.same++;
    else if (recorded)
      this.cells.refuse(line, 'response', {
        code: 'recorded-otherwise',
        here: recorded.response,
        now: finding.response,
      });
    else if (added) this.again(line, lineOf.get(added) ?? visit.line, added, finding);
    else {
      visit.added.push(finding);
      lineOf.set(finding, line);
    }
  }

  /** What stands twice: two columns of one row may say the same, and must not say two things. */
  again(line: Line, first: Line, before: RawFinding, now: RawFinding): void {
    if (first.row !== line.row)
      this.cells.refuse(line, 'reflex', { code: 'twice', first: first.row.number });
    else if (first.answers && before.response !== now.response)
      this.cells.refuse(line, 'response', {
        code: 'differs',
        other: first.answers.column,
        before: before.response,
        now: now.response,
      });
  }

  /** The note of a new visit is the first that is given; a visit that is here keeps its own. */
  note(line: Line, visit: DraftVisit): void {
    const note = this.cells.text(line, 'note');
    if (note === '' || note === visit.note) return;
    if (visit.note !== '' || visit.isHere) {
      const first = visit.isHere ? undefined : visit.line.row.number;
      this.cells.refuse(line, 'note', { code: 'other-note', first });
      return;
    }
    visit.note = note;
    visit.line = line;
  }
}

/** Plans a whole sheet. Nothing that is here is changed or taken away by it: findings are only added. */
export function planSheet(sheet: Sheet, mapping: Mapping, around: Around): SheetPlan {
  const planner = new Planner(mapping, around);
  let unanswered = 0;
  for (const row of sheet.rows) {
    const lines = linesOf(row, mapping.answers);
    if (lines.length === 0) unanswered++;
    for (const line of lines) planner.add(line);
  }
  const { cells, same, left } = planner;
  const children = [...planner.children.drafts.values()].flatMap(
    (draft) => grown(draft, around.atlas, (...fault) => cells.refuse(...fault)) ?? [],
  );
  const problems = cells.problems.toSorted((a, b) => a.row - b.row);
  return { children, problems, wrong: cells.wrong, same, left, unanswered };
}
