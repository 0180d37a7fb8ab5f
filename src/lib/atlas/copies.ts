/** Who has it from whom: which ages two sources print alike and which apart. Tables copy one another. */
import { isByTerm, printedSpan } from './printed.ts';
import type { Claim, SourceData } from './types.ts';

/** A dated age of a source: a reflex, which end, and the days it stands for. */
interface Cell {
  reflex: string;
  end: 'appears' | 'integrates';
  days: string;
  /** "Birth" is what any table prints, so that two printing it alike says nothing. */
  byChance: boolean;
}

export interface CellName {
  reflex: string;
  end: 'appears' | 'integrates';
}

/** Two sources laid side by side, cell by cell; what only one of them dates counts for neither. */
export interface Alike {
  a: string;
  b: string;
  /** Dated alike, "birth" left out. */
  common: readonly CellName[];
  /** Dated by both and differently. */
  apart: readonly CellName[];
}

function cellsOf({ reflex, appears, integrates }: Claim): Cell[] {
  const cells: Cell[] = [];
  for (const [end, printed] of [
    ['appears', appears],
    ['integrates', integrates],
  ] as const) {
    if (!printed) continue;
    const span = printedSpan(printed);
    const days = span
      ? `${span.from.toFixed(1)} to ${span.to.toFixed(1)}`
      : `later than ${printed.low} ${printed.unit}`;
    cells.push({ reflex, end, days, byChance: end === 'appears' && isByTerm(printed) });
  }
  return cells;
}

const windowCells = (source: SourceData): Cell[] =>
  source.claims.filter(({ role }) => role === 'window').flatMap(cellsOf);

/** Two sources cell by cell. Of several rows of one source on one reflex, one alike is enough. */
export function alike(a: SourceData, b: SourceData): Alike {
  const theirs = windowCells(b);
  const common = new Map<string, CellName>();
  const apart = new Map<string, CellName>();
  for (const cell of windowCells(a)) {
    const { reflex, end, days } = cell;
    const same = theirs.filter((other) => other.reflex === reflex && other.end === end);
    if (same.length === 0) continue;
    const key = `${reflex} ${end}`;
    if (same.some((other) => other.days === days)) {
      apart.delete(key);
      common.set(key, { reflex, end });
      if (cell.byChance) common.delete(key);
    } else if (!common.has(key)) apart.set(key, { reflex, end });
  }
  return { a: a.id, b: b.id, common: [...common.values()], apart: [...apart.values()] };
}

/** So many cells in common, and none apart, are no chance: the rule of ours for a copy. */
export const COPIED_CELLS = 3;

/** Every pair of sources with at least so many cells in common, most alike first. */
export function likePairs(sources: readonly SourceData[], least = COPIED_CELLS): Alike[] {
  const dating = sources.filter((source) => windowCells(source).length > 0);
  return dating
    .flatMap((a, i) => dating.slice(i + 1).map((b) => alike(a, b)))
    .filter(({ common }) => common.length >= least)
    .sort((p, q) => q.common.length - p.common.length || p.apart.length - q.apart.length);
}

/** The pairs that print the same cells where chance would not: enough in common and none apart. */
export const copiedPairs = (sources: readonly SourceData[]): Alike[] =>
  likePairs(sources).filter(({ apart }) => apart.length === 0);
