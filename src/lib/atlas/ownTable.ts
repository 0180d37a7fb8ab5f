/**
 * A source of one's own: a textbook's table, a row a reflex, ages as printed. Rows become claims like
 * any other source's; what cannot be read is said on its cell, and nothing is taken until it is mended.
 */
import { readEnd, readStart, type AgeProblem } from './asPrinted.ts';
import { claimFaults } from './check.ts';
import { OWN_PREFIX } from './ownId.ts';
import { nameIndex, reflexNamed, type NameIndex } from './search.ts';
import type { Claim, Reflex, ReflexProse, SourceData } from './types.ts';

export const COLUMNS = ['reflex', 'appears', 'integrates', 'note'] as const;
export type Column = (typeof COLUMNS)[number];

/** One row as typed. */
export type Row = Readonly<Record<Column, string>>;

export type CellProblemCode =
  | { code: AgeProblem }
  | { code: 'unknown-reflex'; nearest: string | undefined }
  | { code: 'twice'; firstRow: number }
  | { code: 'nothing-stated' }
  | { code: 'ends-before-start' }
  | { code: 'formula' }
  | { code: 'markup' }
  | { code: 'too-long'; limit: number };

/** A problem and its cell; rows count from 0. */
export type CellProblem = CellProblemCode & { row: number; column: Column };

export interface TableRead {
  claims: readonly Claim[];
  problems: readonly CellProblem[];
}

const MAX_CELL = 400;
/** What a spreadsheet would run. A lone dash is "not stated". */
const FORMULA = /^[=+@]|^-(?=[^\s\d–-])/;
const MARKUP = /<\s*[/!]?\s*[a-z][^<>]*>|<\s*script|javascript\s*:/i;

export function textProblem(cell: string): CellProblemCode | undefined {
  if (cell.length > MAX_CELL) return { code: 'too-long', limit: MAX_CELL };
  if (FORMULA.test(cell.trim())) return { code: 'formula' };
  if (MARKUP.test(cell)) return { code: 'markup' };
  return undefined;
}

interface Names {
  reflexes: readonly Reflex[];
  prose: Readonly<Record<string, ReflexProse>>;
  index: NameIndex;
}

/** Reads one row into a claim, or its problems. */
function readRow(row: Row, { reflexes, prose, index }: Names): Claim | [Column, CellProblemCode][] {
  const problems: [Column, CellProblemCode][] = [];
  for (const column of COLUMNS) {
    const problem = textProblem(row[column]);
    if (problem) problems.push([column, problem]);
  }
  if (problems.length > 0) return problems;
  const named = reflexNamed(row.reflex, reflexes, prose, index);
  if (!named?.exact) problems.push(['reflex', { code: 'unknown-reflex', nearest: named?.id }]);
  const start = readStart(row.appears);
  const end = readEnd(row.integrates);
  if ('problem' in start) problems.push(['appears', { code: start.problem }]);
  if ('problem' in end) problems.push(['integrates', { code: end.problem }]);
  if (problems.length > 0 || !named || 'problem' in start || 'problem' in end) return problems;
  if (start.status === 'not-stated' && end.status === 'not-stated')
    return [['appears', { code: 'nothing-stated' }]];
  const claim: Claim = {
    reflex: named.id,
    role: 'window',
    basis: 'read',
    appearsStatus: start.status,
    ...('printed' in start ? { appears: start.printed } : {}),
    integratesStatus: end.status,
    ...('printed' in end ? { integrates: end.printed } : {}),
    ...(row.note.trim() ? { note: row.note.trim() } : {}),
  };
  const kind = reflexes.find((reflex) => reflex.id === named.id)?.kind;
  const faults = claimFaults(claim, kind);
  if (faults.some((fault) => fault.includes('before it appears')))
    return [['integrates', { code: 'ends-before-start' }]];
  return faults.length > 0 ? [['appears', { code: 'out-of-range' }]] : claim;
}

/** Reads a whole table. Claims are given only when no cell has a problem. */
export function readTable(
  rows: readonly Row[],
  reflexes: readonly Reflex[],
  prose: Readonly<Record<string, ReflexProse>>,
): TableRead {
  const names: Names = { reflexes, prose, index: nameIndex(reflexes, prose) };
  const claims: Claim[] = [];
  const problems: CellProblem[] = [];
  const first = new Map<string, number>();
  rows.forEach((row, number) => {
    const read = readRow(row, names);
    if (Array.isArray(read)) {
      for (const [column, problem] of read) problems.push({ ...problem, row: number, column });
      return;
    }
    const before = first.get(read.reflex);
    if (before === undefined) first.set(read.reflex, number);
    else problems.push({ code: 'twice', firstRow: before, row: number, column: 'reflex' });
    claims.push(read);
  });
  return { claims: problems.length > 0 ? [] : claims, problems };
}

/** A source of one's own as any other source. */
export const ownSource = (id: string, short: string, claims: readonly Claim[]): SourceData => ({
  id: id.startsWith(OWN_PREFIX) ? id : OWN_PREFIX + id,
  short,
  year: null,
  tier: 'textbook',
  basis: 'read',
  claims,
  counts: [],
});
