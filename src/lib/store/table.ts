/** A source of one's own from and to a CSV file. Papa Parse reads and writes the cells. */
import Papa from 'papaparse';
import { COLUMNS, type Column, type Row } from '../atlas/ownTable.ts';
import { disarmed } from './disarm.ts';
import { isHeavyTable } from './tableWeight.ts';

export const MAX_TABLE_BYTES = 1_000_000;
export const MAX_ROWS = 500;
/** With blank lines among the rows; more are not read to their end. */
const MOST_LINES = 10 * MAX_ROWS;

export type TableProblem =
  | { code: 'too-large'; megabytes: number }
  | { code: 'no-rows' }
  | { code: 'too-many-rows'; limit: number }
  | { code: 'missing-columns'; missing: readonly Column[] }
  | { code: 'unknown-columns'; unknown: readonly string[] }
  | { code: 'not-a-table' };

export type TableFile = { ok: true; rows: Row[] } | { ok: false; problem: TableProblem };

const NEEDED: readonly Column[] = ['reflex', 'appears', 'integrates'];
const isColumn = (name: string): name is Column => (COLUMNS as readonly string[]).includes(name);

const refuse = (problem: TableProblem): TableFile => ({ ok: false, problem });

/** A table too large to be read, before it is. */
export const tableTooLarge = (bytes: number): TableProblem | undefined =>
  bytes > MAX_TABLE_BYTES ? { code: 'too-large', megabytes: Math.round(bytes / 1e6) } : undefined;

/** Reads CSV text: the first row names the columns, in any order; separators are found. */
export function readCsv(text: string): TableFile {
  const large = tableTooLarge(text.length);
  if (large) return refuse(large);
  if (text.includes('\0') || isHeavyTable(text)) return refuse({ code: 'not-a-table' });
  const { data, meta } = Papa.parse<Record<string, string | undefined>>(
    text.replace(/^\uFEFF/, ''),
    {
      header: true,
      skipEmptyLines: 'greedy',
      preview: MOST_LINES,
      transformHeader: (name) => name.trim().toLowerCase(),
    },
  );
  const names = (meta.fields ?? []).filter((name) => name !== '');
  const missing = NEEDED.filter((column) => !names.includes(column));
  if (names.length === 0) return refuse({ code: 'not-a-table' });
  if (missing.length > 0) return refuse({ code: 'missing-columns', missing });
  const unknown = names.filter((name) => !isColumn(name));
  if (unknown.length > 0) return refuse({ code: 'unknown-columns', unknown: unknown.slice(0, 5) });
  if (data.length === 0) return refuse({ code: 'no-rows' });
  if (data.length > MAX_ROWS || meta.truncated)
    return refuse({ code: 'too-many-rows', limit: MAX_ROWS });
  const cell = (row: Record<string, string | undefined>, column: Column): string =>
    (row[column] ?? '').trim();
  return {
    ok: true,
    rows: data.map((row) => ({
      reflex: cell(row, 'reflex'),
      appears: cell(row, 'appears'),
      integrates: cell(row, 'integrates'),
      note: cell(row, 'note'),
    })),
  };
}

/** Rows as CSV text. What a spreadsheet would run is disarmed with an apostrophe. */
export const writeCsv = (rows: readonly Row[]): string =>
  `${Papa.unparse(
    { fields: [...COLUMNS], data: rows.map((row) => COLUMNS.map((c) => disarmed(row[c]))) },
    { newline: '\n' },
  )}\n`;

/** A template to fill: the columns, and three rows that show how ages may be written. */
export const TEMPLATE: readonly Row[] = [
  { reflex: 'Moro reflex', appears: '28 wk', integrates: '4-6 mo', note: 'p. 112' },
  { reflex: 'Palmar grasp reflex', appears: 'birth', integrates: '6 months', note: '' },
  { reflex: 'Protective extension, forward', appears: '6-7 mo', integrates: 'persists', note: '' },
];
