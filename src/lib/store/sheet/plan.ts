/** What a sheet would add, before anything is: findings to visits, visits to children, children. */
import { parseGestation } from '../../age/gestation.ts';
import type { CivilDate } from '../../age/civil.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { Side } from '../../atlas/types.ts';
import { rawOf } from '../../case/file.ts';
import { FORMAT, VERSION, type RawCase, type RawChild, type RawFinding } from '../../case/shape.ts';
import type { Kept } from '../store.ts';
import type { SheetField } from './columns.ts';
import { readDate } from './dates.ts';
import { grown, visitKey, type Draft, type DraftVisit, type PlannedChild } from './grown.ts';
import { cellOf, columnOf, linesOf, wordOf, type Line, type Mapping } from './lines.ts';
import { mendedBy, type CellFault, type CellProblem } from './problems.ts';
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

const MAX_PROBLEMS = 1000;

/** What every line of a row has in common. */
interface Head {
  row: SheetRow;
  on: CivilDate | undefined;
  draft: Draft | undefined;
  isSound: boolean;
}

class Planner {
  readonly problems: CellProblem[] = [];
  readonly drafts = new Map<string, Draft>();
  same = 0;
  left = 0;
  wrong = 0;
  /** The faults of the cells that the lines of a row share, each of which is told once. */
  readonly #told = new Set<string>();
  #toldRow = 0;
  readonly #alike = new Map<string, CellProblem>();
  #head: Head | undefined;
  readonly #mapping: Mapping;
  readonly #atlas: Atlas;
  readonly #shelf: readonly Kept[];
  readonly #open: Kept | undefined;

  constructor(mapping: Mapping, atlas: Atlas, shelf: readonly Kept[], open: Kept | undefined) {
    this.#mapping = mapping;
    this.#atlas = atlas;
    this.#shelf = shelf;
    this.#open = open;
  }

  cell(line: Line, field: SheetField): string {
    return cellOf(line, field, this.#mapping);
  }

  refuse(line: Line, field: SheetField, fault: CellFault): undefined {
    const row = line.row.number;
    const column = columnOf(line, field, this.#mapping);
    if (line.answers && line.answers.column !== column) {
      if (row !== this.#toldRow) this.#told.clear();
      this.#toldRow = row;
      const key = `${field} ${fault.code} ${'reflex' in fault ? fault.reflex : ''}`;
      if (this.#told.has(key)) return;
      this.#told.add(key);
    }
    this.wrong++;
    const mend = mendedBy(field, column, fault);
    const alike = mend === undefined ? undefined : this.#alike.get(mend);
    if (alike) alike.more++;
    else if (this.problems.length < MAX_PROBLEMS) {
      const problem: CellProblem = { ...fault, row, field, column, more: 0 };
      this.problems.push(problem);
      if (mend !== undefined) this.#alike.set(mend, problem);
    }
  }

  date(line: Line, field: 'date' | 'born' | 'due'): CivilDate | undefined {
    const text = this.cell(line, field);
    if (text === '') return this.refuse(line, field, { code: 'empty' });
    const { order } = this.#mapping;
    return (
      readDate(text, order) ??
      this.refuse(line, field, { code: 'bad-date', text: text.slice(0, 60), order })
    );
  }

  /** The visit and the child of a row, read once for all its lines. */
  head(line: Line): Head {
    const { row } = line;
    if (this.#head?.row === row) return this.#head;
    const before = this.wrong;
    const [on, draft] = [this.date(line, 'date'), this.child(line)];
    return (this.#head = { row, on, draft, isSound: this.wrong === before });
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
      const text = this.cell(line, kind);
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
    const isSideUndecided = words.side === undefined && this.cell(line, 'side') !== '';
    if (known && !isSideUndecided && !sides?.every((side) => has.includes(side)))
      faults.push(['side', { code: 'no-side', reflex: known.name, has }]);
    const columns =
      faults.length > 1 ? faults.map(([field]) => columnOf(line, field, this.#mapping)) : [];
    for (const [index, [field, fault]] of faults.entries())
      // of two things that are wrong in a cell the first is told
      if (index === 0 || columns.indexOf(columns[index]) === index) this.refuse(line, field, fault);
    if (!on || !draft || !sides || faults.length > 0 || !isSound) return;
    for (const side of sides)
      this.put(line, draft, on, {
        reflex,
        side,
        response,
        state: words.state ?? 'not-recorded',
        // a row that is a visit has a note of the visit
        note: line.answers ? '' : this.cell(line, 'note'),
      });
  }

  /** The child of a row: the one here with its label, one met before, or a new one. */
  child(line: Line): Draft | undefined {
    const named = this.cell(line, 'child');
    const key = named.toLowerCase();
    const label = named || this.#open?.record.child.label;
    const known = this.drafts.get(key);
    if (known) return known;
    const here =
      named === ''
        ? this.#open
        : this.#shelf.find(({ record }) => record.child.label.toLowerCase() === key);
    if (here) {
      const born = this.cell(line, 'born') === '' ? undefined : this.date(line, 'born');
      const kept = here.record.child.birth.born;
      if (born && born !== kept)
        return this.refuse(line, 'born', { code: 'other-birth', text: born, here: kept });
      return this.draft(key, here.record.child.label, here, rawOf(here.record), line);
    }
    const child = this.newChild(line, label ?? '');
    return (
      child &&
      this.draft(
        key,
        child.label,
        undefined,
        { format: FORMAT, version: VERSION, child, visits: [] },
        line,
      )
    );
  }

  newChild(line: Line, label: string): RawChild | undefined {
    const has = (field: SheetField): boolean => this.cell(line, field) !== '';
    if (label === '' || !has('born') || !(has('gestation') || has('due')))
      return this.refuse(line, 'child', { code: 'no-child', text: label.slice(0, 60) });
    const born = this.date(line, 'born');
    const due = has('due') ? this.date(line, 'due') : undefined;
    // weeks with a comma or point could be a fraction of a week or days: only a whole one is certain
    const gestation = this.cell(line, 'gestation').replace(/[.,]0+$/, '');
    if (gestation !== '' && parseGestation(gestation) === undefined)
      return this.refuse(line, 'gestation', { code: 'gestation', text: gestation.slice(0, 60) });
    if (!born) return undefined;
    return {
      label,
      born,
      ...(gestation ? { gestation } : {}),
      ...(due ? { due } : {}),
      dating: 'unknown',
      invented: false,
    };
  }

  draft(key: string, label: string, here: Kept | undefined, raw: RawCase, line: Line): Draft {
    const draft: Draft = { label, here, raw, line, visits: new Map(), lineOf: new Map() };
    this.drafts.set(key, draft);
    return draft;
  }

  put(line: Line, draft: Draft, on: CivilDate, finding: RawFinding): void {
    const examiner = this.cell(line, 'examiner');
    const key = visitKey(on, examiner);
    let visit = draft.visits.get(key);
    if (!visit) {
      const here = draft.raw.visits.find((one) => one.on === on && one.examiner === examiner);
      const [old, note, isHere] = [here?.findings ?? [], here?.note ?? '', here !== undefined];
      visit = { on, examiner, note, isHere, old, added: [], line };
      draft.visits.set(key, visit);
    }
    if (line.answers) this.note(line, visit);
    const alike = (one: RawFinding): boolean =>
      one.reflex === finding.reflex && one.side === finding.side;
    const recorded = visit.old.find(alike);
    const added = visit.added.find(alike);
    if (recorded && recorded.response === finding.response) this.same++;
    else if (recorded)
      this.refuse(line, 'response', {
        code: 'recorded-otherwise',
        here: recorded.response,
        now: finding.response,
      });
    else if (added) this.again(line, draft.lineOf.get(added) ?? visit.line, added, finding);
    else {
      visit.added.push(finding);
      draft.lineOf.set(finding, line);
    }
  }

  /** What stands twice: two columns of one row may say the same, and must not say two things. */
  again(line: Line, first: Line, before: RawFinding, now: RawFinding): void {
    if (first.row !== line.row)
      this.refuse(line, 'reflex', { code: 'twice', first: first.row.number });
    else if (first.answers && before.response !== now.response)
      this.refuse(line, 'response', {
        code: 'differs',
        other: first.answers.column,
        before: before.response,
        now: now.response,
      });
  }

  /** The note of a new visit is the first that is given; a visit that is here keeps its own. */
  note(line: Line, visit: DraftVisit): void {
    const note = this.cell(line, 'note');
    if (note === '' || note === visit.note) return;
    if (visit.note !== '' || visit.isHere) {
      const first = visit.isHere ? undefined : visit.line.row.number;
      this.refuse(line, 'note', { code: 'other-note', first });
      return;
    }
    visit.note = note;
    visit.line = line;
  }
}

/** Plans a whole sheet. Nothing that is here is changed or taken away by it: findings are only added. */
export function planSheet(
  sheet: Sheet,
  mapping: Mapping,
  atlas: Atlas,
  shelf: readonly Kept[],
  open: Kept | undefined,
): SheetPlan {
  const planner = new Planner(mapping, atlas, shelf, open);
  let unanswered = 0;
  for (const row of sheet.rows) {
    const lines = linesOf(row, mapping.answers);
    if (lines.length === 0) unanswered++;
    for (const line of lines) planner.add(line);
  }
  const children = [...planner.drafts.values()].flatMap(
    (draft) => grown(draft, atlas, (...fault) => planner.refuse(...fault)) ?? [],
  );
  const problems = planner.problems.toSorted((a, b) => a.row - b.row);
  const { wrong, same, left } = planner;
  return { children, problems, wrong, same, left, unanswered };
}
