/**
 * Cohen's kappa of a square table of counts: how far two judges agree beyond what their own habits
 * would bring about by chance. Cohen 1960 (kappa), Cohen 1968 (weighted kappa).
 */
import { Z95 } from '../number/wilson.ts';

/** Counts: rows are the first judge's answers, columns the second's, in the same order. */
export type Table = readonly (readonly number[])[];

/** Weights of agreement: 1 on the diagonal, 0 where two answers lie furthest apart. */
export type Weights = Table;

export interface KappaEstimate {
  code: 'estimated';
  /** At most 1; 0 is no better than chance, below 0 worse. */
  kappa: number;
  /** Share of the (weighted) agreement that was seen, and that chance alone would bring, 0 to 1. */
  observed: number;
  expected: number;
  /** Large-sample standard error; 0 where every pair agrees, which says little when they are few. */
  standardError: number;
  /** kappa ± 1.96 standard errors, clipped to -1 to 1. */
  interval: { low: number; high: number };
}

/**
 * Why there is no kappa: nothing was counted, or both judges gave one and the same answer throughout,
 * so that chance alone would have them agree and there is nothing to be better than.
 */
export type Kappa = KappaEstimate | { code: 'no-pairs' } | { code: 'one-answer' };

const square = (size: number, of: (i: number, j: number) => number): number[][] =>
  Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => of(i, j)));

/** Full agreement or none: the weights of plain kappa. */
export const plainWeights = (size: number): Weights => square(size, (i, j) => (i === j ? 1 : 0));

/** 1 - |i - j| / (size - 1): each step apart costs the same (Cohen 1968). Size is 2 or more. */
export const linearWeights = (size: number): Weights =>
  square(size, (i, j) => 1 - Math.abs(i - j) / (size - 1));

const sum = (values: readonly number[]): number => values.reduce((total, v) => total + v, 0);

/** The share of each answer: the first judge's by row, the second's by column. */
function margins(shares: Table): { rows: number[]; columns: number[] } {
  return { rows: shares.map(sum), columns: shares.map((_, j) => sum(shares.map((r) => r[j]!))) };
}

/** Rounding leaves a variance of nothing a hair above or below it. */
const ROUNDING = 1e-14;

/**
 * Kappa of a table under weights, which for plain kappa are 1 and 0. The standard error is that for
 * an interval (not for a test against 0) of Fleiss, Cohen & Everitt 1969, "Large sample standard errors
 * of kappa and weighted kappa", formula from memory: with w̄ the mean weight of a row's or a column's
 * answer under the other judge's margin,
 *
 *   n (1 - pe)^4 var = sum p_ij [ w_ij (1 - pe) - (w̄_i + w̄_j)(1 - po) ]² - (po pe - 2 pe + po)²
 */
export function kappaOf(table: Table, weights: Weights): Kappa {
  const n = sum(table.map(sum));
  if (n === 0) return { code: 'no-pairs' };
  const shares = table.map((row) => row.map((count) => count / n));
  const { rows, columns } = margins(shares);
  if (rows.some((share, i) => share * n > n - 0.5 && columns[i]! * n > n - 0.5))
    return { code: 'one-answer' };
  const cells = shares.flatMap((row, i) =>
    row.map((p, j) => ({ p, w: weights[i]![j]!, chance: rows[i]! * columns[j]!, i, j })),
  );
  const observed = sum(cells.map(({ p, w }) => p * w));
  const expected = sum(cells.map(({ chance, w }) => chance * w));
  const rowMean = weights.map((row) => sum(row.map((w, j) => w * columns[j]!)));
  const columnMean = weights.map((_, j) => sum(rows.map((p, i) => p * weights[i]![j]!)));
  const beyond = 1 - expected;
  const spread = sum(
    cells.map(
      ({ p, w, i, j }) => p * (w * beyond - (rowMean[i]! + columnMean[j]!) * (1 - observed)) ** 2,
    ),
  );
  const variance =
    (spread - (observed * expected - 2 * expected + observed) ** 2) / n / beyond ** 4;
  const kappa = (observed - expected) / beyond;
  const standardError = variance > ROUNDING ? Math.sqrt(variance) : 0;
  return {
    code: 'estimated',
    kappa,
    observed,
    expected,
    standardError,
    interval: {
      low: Math.max(-1, kappa - Z95 * standardError),
      high: Math.min(1, kappa + Z95 * standardError),
    },
  };
}
