/** What a sheet would add, before anything is: findings to visits, visits to children, children. */
import { parseGestation } from '../../age/gestation.ts';
import type { CivilDate } from '../../age/civil.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { Side } from '../../atlas/types.ts';
import type { Case } from '../../case/case.ts';
import { rawOf } from '../../case/file.ts';
import { parseRaw } from '../../case/parse.ts';
import type { Problem } from '../../case/problem.ts';
import {
  FORMAT,
  VERSION,
  type RawCase,
  type RawChild,
  type RawFinding,
  type RawVisit,
} from '../../case/shape.ts';
import type { Kept } from '../store.ts';
import { NEEDED, type Columns, type SheetField } from './columns.ts';
import { readDate, type DateOrder } from './dates.ts';
import type { Sheet, SheetRow } from './read.ts';
import { LEAVE, sidesOf, type Valued, type Values } from './values.ts';

export interface Mapping {
  columns: Columns;
  values: Values;
  order: DateOrder;
}

export type CellFault =
  | { code: 'empty' }
  | { code: 'bad-date'; text: string; order: DateOrder }
  | { code: 'undecided'; text: string }
  | { code: 'no-side'; reflex: string; has: readonly Side[] }
  | { code: 'no-child'; text: string }
  | { code: 'gestation'; text: string }
  | { code: 'other-birth'; text: string; here: CivilDate }
  | { code: 'recorded-otherwise'; here: string; now: string }
  | { code: 'twice'; first: number }
  | { code: 'record'; problem: Problem };

/** A cell that is wrong: the row as the sheet counts it, and the column. */
export type CellProblem = CellFault & { row: number; field: SheetField };

export interface PlannedVisit {
  on: string;
  examiner: string;
  /** Whether the child has this visit already. */
  isHere: boolean;
  added: readonly RawFinding[];
}

export interface PlannedChild {
  label: string;
  /** The child here that is added to; undefined for a new one. */
  here: Kept | undefined;
  record: Case;
  visits: readonly PlannedVisit[];
}

export interface SheetPlan {
  children: readonly PlannedChild[];
  problems: readonly CellProblem[];
  /** Findings that are here already, the same. */
  same: number;
  /** Rows left out by the reader's choice. */
  left: number;
}

/** The fields that have no column yet, without which nothing can be read. */
export const lacking = (columns: Columns): SheetField[] =>
  NEEDED.filter((field) => columns[field] === undefined);

interface Draft {
  label: string;
  here: Kept | undefined;
  raw: RawCase;
  /** The row that a child or a visit came from, for saying where its problem lies. */
  row: number;
  visits: Map<string, PlannedVisit & { added: RawFinding[]; row: number }>;
  rowOf: Map<RawFinding, number>;
}

class Planner {
  readonly problems: CellProblem[] = [];
  readonly drafts = new Map<string, Draft>();
  same = 0;
  left = 0;
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

  cell({ cells }: SheetRow, field: SheetField): string {
    const column = this.#mapping.columns[field];
    return column === undefined ? '' : (cells[column] ?? '');
  }

  refuse(row: SheetRow, field: SheetField, fault: CellFault): undefined {
    this.problems.push({ ...fault, row: row.number, field });
  }

  date(row: SheetRow, field: 'date' | 'born' | 'due'): CivilDate | undefined {
    const text = this.cell(row, field);
    if (text === '') return this.refuse(row, field, { code: 'empty' });
    const { order } = this.#mapping;
    return (
      readDate(text, order) ??
      this.refuse(row, field, { code: 'bad-date', text: text.slice(0, 60), order })
    );
  }

  /** What a word is read as: undefined when it stands for nothing, `leave`, or a code. */
  word(row: SheetRow, kind: Valued): string | undefined {
    const word = this.cell(row, kind);
    if (word === '') return undefined;
    const values = this.#mapping.values[kind];
    return Object.hasOwn(values, word) ? values[word] : undefined;
  }

  add(row: SheetRow): void {
    const words = {
      reflex: this.word(row, 'reflex'),
      response: this.word(row, 'response'),
      side: this.word(row, 'side'),
      state: this.word(row, 'state'),
    };
    if (Object.values(words).includes(LEAVE)) {
      this.left++;
      return;
    }
    const before = this.problems.length;
    for (const kind of ['reflex', 'response', 'side', 'state'] as const) {
      const text = this.cell(row, kind);
      if (words[kind] !== undefined) continue;
      if (text !== '') this.refuse(row, kind, { code: 'undecided', text: text.slice(0, 60) });
      else if (kind === 'reflex' || kind === 'response') this.refuse(row, kind, { code: 'empty' });
    }
    const on = this.date(row, 'date');
    const draft = this.child(row);
    const { reflex = '', response = '' } = words;
    const known = this.#atlas.reflexes.get(reflex);
    const has: Side[] = [
      ...(known?.testedPerSide ? (['left', 'right'] as const) : []),
      ...(known?.midline ? (['midline'] as const) : []),
    ];
    const sides = sidesOf(words.side, has);
    if (known && (!sides || sides.some((side) => !has.includes(side))))
      this.refuse(row, 'side', { code: 'no-side', reflex: known.name, has });
    if (!on || !draft || !sides || this.problems.length > before) return;
    for (const side of sides)
      this.put(row, draft, on, {
        reflex,
        side,
        response,
        state: words.state ?? 'not-recorded',
        note: this.cell(row, 'note'),
      });
  }

  /** The child of a row: the one here with its label, one met before, or a new one. */
  child(row: SheetRow): Draft | undefined {
    const named = this.cell(row, 'child');
    const key = named.toLowerCase();
    const label = named || this.#open?.record.child.label;
    const known = this.drafts.get(key);
    if (known) return known;
    const here =
      named === ''
        ? this.#open
        : this.#shelf.find(({ record }) => record.child.label.toLowerCase() === key);
    if (here) {
      const born = this.cell(row, 'born') === '' ? undefined : this.date(row, 'born');
      const kept = here.record.child.birth.born;
      if (born && born !== kept)
        return this.refuse(row, 'born', { code: 'other-birth', text: born, here: kept });
      return this.draft(key, here.record.child.label, here, rawOf(here.record), row.number);
    }
    const child = this.newChild(row, label ?? '');
    return (
      child &&
      this.draft(
        key,
        child.label,
        undefined,
        { format: FORMAT, version: VERSION, child, visits: [] },
        row.number,
      )
    );
  }

  newChild(row: SheetRow, label: string): RawChild | undefined {
    const has = (field: SheetField): boolean => this.cell(row, field) !== '';
    if (label === '' || !has('born') || !(has('gestation') || has('due')))
      return this.refuse(row, 'child', { code: 'no-child', text: label.slice(0, 60) });
    const born = this.date(row, 'born');
    const due = has('due') ? this.date(row, 'due') : undefined;
    // weeks with a comma or point could be a fraction of a week or days: only a whole one is certain
    const gestation = this.cell(row, 'gestation').replace(/[.,]0+$/, '');
    if (gestation !== '' && parseGestation(gestation) === undefined)
      return this.refuse(row, 'gestation', { code: 'gestation', text: gestation.slice(0, 60) });
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

  draft(key: string, label: string, here: Kept | undefined, raw: RawCase, row: number): Draft {
    const draft: Draft = { label, here, raw, row, visits: new Map(), rowOf: new Map() };
    this.drafts.set(key, draft);
    return draft;
  }

  put(row: SheetRow, draft: Draft, on: CivilDate, finding: RawFinding): void {
    const examiner = this.cell(row, 'examiner');
    const key = `${on} ${examiner}`;
    const old = draft.raw.visits.find((visit) => visit.on === on && visit.examiner === examiner);
    let visit = draft.visits.get(key);
    if (!visit) {
      visit = { on, examiner, isHere: old !== undefined, added: [], row: row.number };
      draft.visits.set(key, visit);
    }
    const alike = (one: RawFinding): boolean =>
      one.reflex === finding.reflex && one.side === finding.side;
    const recorded = old?.findings.find(alike);
    const added = visit.added.find(alike);
    if (recorded && recorded.response === finding.response) this.same++;
    else if (recorded)
      this.refuse(row, 'response', {
        code: 'recorded-otherwise',
        here: recorded.response,
        now: finding.response,
      });
    else if (added)
      this.refuse(row, 'reflex', { code: 'twice', first: draft.rowOf.get(added) ?? visit.row });
    else {
      visit.added.push(finding);
      draft.rowOf.set(finding, row.number);
    }
  }

  /** A child with what is added, through the parser; its problems are told by the row they came from. */
  finish({ label, here, raw, row, visits, rowOf }: Draft): PlannedChild[] {
    const added = [...visits.values()].filter((visit) => visit.added.length > 0);
    if (added.length === 0) return [];
    const grown = raw.visits.map((visit): RawVisit => {
      const more = added.find(({ on, examiner }) => on === visit.on && examiner === visit.examiner);
      return more ? { ...visit, findings: [...visit.findings, ...more.added] } : visit;
    });
    const fresh = added
      .filter(({ isHere }) => !isHere)
      .map(({ on, examiner, added: findings }): RawVisit => {
        return { on, examiner, note: '', findings, milestones: [] };
      });
    const whole = { ...raw, visits: [...grown, ...fresh] };
    const parsed = parseRaw(whole, this.#atlas);
    if (parsed.ok) return [{ label, here, record: parsed.value, visits: added }];
    for (const problem of parsed.problems) {
      const visit = whole.visits[(problem.at.visit?.number ?? 0) - 1];
      const finding = visit?.findings[(problem.at.finding?.number ?? 0) - 1];
      const source = added.find(
        ({ on, examiner }) => on === visit?.on && examiner === visit.examiner,
      );
      this.problems.push({
        code: 'record',
        problem,
        row: (finding && rowOf.get(finding)) ?? source?.row ?? row,
        field: fieldOf(problem),
      });
    }
    return [];
  }
}

/** The column a problem of the record lies in. */
function fieldOf({ at: { field } }: Problem): SheetField {
  if (field === 'on') return 'date';
  if (field === 'label') return 'child';
  const fields: readonly SheetField[] = ['born', 'gestation', 'due', 'examiner', 'note', 'side'];
  return fields.find((one) => one === field) ?? 'reflex';
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
  for (const row of sheet.rows) planner.add(row);
  const children = [...planner.drafts.values()].flatMap((draft) => planner.finish(draft));
  const problems = planner.problems.toSorted((a, b) => a.row - b.row);
  return { children, problems, same: planner.same, left: planner.left };
}
