/** A case's findings as a table for a spreadsheet: one row a finding. Papa Parse writes the cells. */
import Papa from 'papaparse';
import { formatGestation } from '../age/gestation.ts';
import type { CivilDate } from '../age/civil.ts';
import type { Side } from '../atlas/types.ts';
import type { InfantState, Response } from '../case/finding.ts';
import { disarmed } from './disarm.ts';

/** One finding with what was made of it. Words are codes: the table is for further counting. */
export interface FindingRow {
  /** The child's label. */
  child: string;
  /** Which child it is when labels are left out, counted from 1. */
  childNumber: number;
  /** Whether the child was made up. */
  invented: boolean;
  on: CivilDate;
  examiner: string;
  /** Gestational age at birth. */
  gestationalDays: number;
  /** Since birth. */
  chronologicalDays: number;
  postmenstrualDays: number;
  /** Since the due date; negative before it. */
  correctedDays: number;
  /** The age that was judged by, days after term or birth, whichever counts. */
  usedDays: number;
  counts: 'corrected' | 'chronological';
  reflex: string;
  reflexName: string;
  side: Side;
  response: Response;
  state: InfantState;
  /** How often it was tried at the visit, 1 to 5. */
  tries: number;
  /** Which variant of the response was tested; empty where the record does not say. */
  variant: string;
  verdict: string;
  /** Why it was not judged; empty when it was. */
  whyNot: string;
  /** The verdict's share over the sources that speak, 0 to 1; null when not judged. */
  share: number | null;
  firm: boolean | null;
  flags: readonly string[];
  attention: string;
  /** How many sources speak at the age, and how many voices they are. */
  sources: number;
  voices: number;
  note: string;
  /** What the examiners of the day agreed on, which the verdict is of; empty where they did not need to. */
  agreed: string;
}

export interface TableOptions {
  /** Without names: no label, examiner or note, each of which may name somebody. */
  names: boolean;
  /** Without dates of visits; the ages stay. */
  dates: boolean;
  /** What a table that is passed on must carry, the same in every row. */
  said?: Said;
}

/** In words: which sources were used, how the age was corrected, whether names are in it, the caution. */
export interface Said {
  sources: string;
  rule: string;
  names: string;
  caution: string;
}

/** What the cells need to know; without names, several children are told apart by number. */
interface Shown extends TableOptions {
  several: boolean;
}

type Cell = string | number;

const SHARE_DIGITS = 4;
const yesNo = (value: boolean | null): Cell => (value === null ? '' : value ? 'yes' : 'no');

/** Every column in its order: its name, and its cell. Ages are whole days; `33w1d` is weeks and days. */
const CELLS: Readonly<Record<string, (row: FindingRow, options: Shown) => Cell>> = {
  child: (row, { names, several }) =>
    names ? row.child : several ? `child ${row.childNumber}` : 'child',
  invented: (row) => yesNo(row.invented),
  visit_date: (row, { dates }) => (dates ? row.on : ''),
  gestation_at_birth: (row) => formatGestation(row.gestationalDays),
  gestation_at_birth_days: (row) => row.gestationalDays,
  chronological_days: (row) => row.chronologicalDays,
  postmenstrual: (row) => formatGestation(row.postmenstrualDays),
  postmenstrual_days: (row) => row.postmenstrualDays,
  corrected_days: (row) => row.correctedDays,
  age_used_days: (row) => row.usedDays,
  age_counts: (row) => row.counts,
  examiner: (row, { names }) => (names ? row.examiner : ''),
  reflex: (row) => row.reflex,
  reflex_name: (row) => row.reflexName,
  side: (row) => row.side,
  response: (row) => row.response,
  agreed: (row) => row.agreed,
  state: (row) => row.state,
  tries: (row) => row.tries,
  variant: (row) => row.variant,
  verdict: (row) => row.verdict,
  why_not_judged: (row) => row.whyNot,
  share: (row) => (row.share === null ? '' : Number(row.share.toFixed(SHARE_DIGITS))),
  firm: (row) => yesNo(row.firm),
  flags: (row) => row.flags.join(' '),
  attention: (row) => row.attention,
  sources: (row) => row.sources,
  voices: (row) => row.voices,
  note: (row, { names }) => (names ? row.note : ''),
  sources_used: (_, { said }) => said?.sources ?? '',
  correction_rule: (_, { said }) => said?.rule ?? '',
  names_in_it: (_, { said }) => said?.names ?? '',
  caution: (_, { said }) => said?.caution ?? '',
};

export const FINDING_COLUMNS: readonly string[] = Object.keys(CELLS);

/**
 * Rows as CSV text (RFC 4180). Every text is quoted, and what a spreadsheet would run is disarmed with an
 * apostrophe, also where a program that splits at semicolons would find a cell in the middle of a text.
 * Numbers stay numbers, negative ones too.
 */
export function findingsCsv(rows: readonly FindingRow[], options: TableOptions): string {
  const several = new Set(rows.map((row) => row.childNumber)).size > 1;
  const shown = { ...options, several };
  const written = (value: Cell): Cell => (typeof value === 'string' ? disarmed(value) : value);
  const data = rows.map((row) => Object.values(CELLS).map((cell) => written(cell(row, shown))));
  const text = Papa.unparse(
    { fields: [...FINDING_COLUMNS], data },
    { quotes: (value: unknown) => typeof value === 'string', newline: '\r\n' },
  );
  return `${text}\r\n`;
}
