/** A clinic's own sheet as rows of cells: whatever separates them, whatever wrote the letters. */
import Papa from 'papaparse';
import { rearmed } from '../../store/disarm.ts';
import { isHeavyTable } from '../../store/tableWeight.ts';

export const MAX_SHEET_BYTES = 2_000_000;
export const MAX_SHEET_ROWS = 5000;
/** Lines that are read on, empty ones too. */
const MOST_LINES = 2 * MAX_SHEET_ROWS;
/** Two for every reflex, and what is said of the child and the visit. */
export const MAX_SHEET_COLUMNS = 160;
/** A cell longer than this is no finding; notes are bounded by the record. */
const MAX_CELL = 5000;

export type SheetProblem =
  | { code: 'too-large'; megabytes: number; limitMegabytes: number }
  | { code: 'no-table' }
  /** No letters, as of a workbook, or of UTF-16 without its mark. */
  | { code: 'no-letters' }
  | { code: 'no-rows' }
  | { code: 'too-many-rows'; limit: number }
  | { code: 'too-many-columns'; limit: number }
  | { code: 'long-cell'; row: number; limit: number };

/** A row with its number in the sheet, where the row of names is 1. */
export interface SheetRow {
  number: number;
  cells: readonly string[];
}

export interface Sheet {
  header: readonly string[];
  rows: readonly SheetRow[];
}

export type ReadSheet = { ok: true; sheet: Sheet } | { ok: false; problem: SheetProblem };

const refuse = (problem: SheetProblem): ReadSheet => ({ ok: false, problem });

export const sheetTooLarge = (bytes: number): SheetProblem | undefined =>
  bytes > MAX_SHEET_BYTES
    ? {
        code: 'too-large',
        megabytes: Math.round(bytes / 1e5) / 10,
        limitMegabytes: MAX_SHEET_BYTES / 1e6,
      }
    : undefined;

/**
 * Bytes as text: by their mark (UTF-8, UTF-16), else as UTF-8, and where they cannot be that, as
 * Windows-1252, in which older spreadsheets write (Encoding Standard, "BOM sniff").
 */
export function textOf(bytes: Uint8Array): string {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (a === 0xfe && b === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/**
 * A table without its mark, and without the line by which some spreadsheets name the separator and which
 * they do not show as a row (common practice, no source). An empty separator is one that is guessed.
 */
function parted(text: string): { delimiter: string; table: string } {
  const table = text.replace(/^\uFEFF/, '');
  const named = /^"?sep=([,;\t|])"?[ \t]*(?:\r\n|\r|\n)/i.exec(table);
  return { delimiter: named?.[1] ?? '', table: table.slice(named?.[0].length ?? 0) };
}

/** Reads a table's text: the first row that is not empty names the columns. */
export function readSheet(text: string): ReadSheet {
  const large = sheetTooLarge(text.length);
  if (large) return refuse(large);
  if (text.includes('\0')) return refuse({ code: 'no-letters' });
  const { delimiter, table } = parted(text);
  if (isHeavyTable(table)) return refuse({ code: 'no-table' });
  const { data, meta } = Papa.parse<string[]>(table, {
    delimiter,
    delimitersToGuess: [',', ';', '\t', '|'],
    preview: MOST_LINES,
  });
  const numbered = data.map((cells, index) => ({
    number: index + 1,
    cells: cells.map((cell) => rearmed(cell).trim()),
  }));
  const [head, ...rest] = numbered.filter(({ cells }) => cells.some((cell) => cell !== ''));
  const header = head?.cells ?? [];
  if (!head || header.filter((name) => name !== '').length < 2) return refuse({ code: 'no-table' });
  if (header.length > MAX_SHEET_COLUMNS)
    return refuse({ code: 'too-many-columns', limit: MAX_SHEET_COLUMNS });
  if (rest.length === 0) return refuse({ code: 'no-rows' });
  // what was not read on is not left out unsaid
  if (rest.length > MAX_SHEET_ROWS || meta.truncated)
    return refuse({ code: 'too-many-rows', limit: MAX_SHEET_ROWS });
  const long = rest.find(({ cells }) => cells.some((cell) => cell.length > MAX_CELL));
  if (long) return refuse({ code: 'long-cell', row: long.number, limit: MAX_CELL });
  return { ok: true, sheet: { header, rows: rest } };
}

/** Whether a text is a table rather than a case file or a bundle: two names at least in its first line. */
export function looksLikeTable(text: string): boolean {
  const start = text
    .slice(0, 4000)
    .replace(/^\uFEFF/, '')
    .trimStart();
  if (start === '' || /^[{[<]/.test(start)) return false;
  const [line = ''] = start.split(/\r\n|\r|\n/);
  return /[,;\t|]/.test(line) && start.length > line.length;
}
