/** Sensitivity, specificity and likelihood ratios of a sign from a table of four cells, with intervals. */
import { wilson, type ShareInterval } from './wilson.ts';

/** Children by sign and outcome; whole numbers from 0 on. */
export interface FourCells {
  truePositive: number;
  falseNegative: number;
  falsePositive: number;
  trueNegative: number;
}

/** A value with its 95 % interval. */
export interface Estimate {
  value: number;
  interval: ShareInterval;
}

/** A share of `n` with Wilson's interval, 0 to 1; undefined of none. */
const shareOf = (hits: number, n: number): Estimate | undefined =>
  n > 0 ? { value: hits / n, interval: wilson(hits, n) } : undefined;

const Z95 = 1.959963984540054;

/**
 * The ratio of two independent shares, a of n over b of m, with the interval of its logarithm (Katz et
 * al., Biometrics 1978;34:469; for likelihood ratios Simel et al., J Clin Epidemiol 1991;44:763).
 * Undefined where a count is nought: the method has no interval then.
 */
export function ratioOf(a: number, n: number, b: number, m: number): Estimate | undefined {
  if (a === 0 || b === 0) return undefined;
  const value = a / n / (b / m);
  const half = Z95 * Math.sqrt(1 / a - 1 / n + 1 / b - 1 / m);
  return { value, interval: { low: value * Math.exp(-half), high: value * Math.exp(half) } };
}

export interface Tells {
  sensitivity: Estimate | undefined;
  specificity: Estimate | undefined;
  /** How many times as often the sign is met with the outcome as without it. */
  positive: Estimate | undefined;
  /** How many times as often the sign is lacking with the outcome as without it. */
  negative: Estimate | undefined;
}

export function tellsOf(cells: FourCells): Tells {
  const { truePositive: tp, falseNegative: fn, falsePositive: fp, trueNegative: tn } = cells;
  const [ill, well] = [tp + fn, fp + tn];
  return {
    sensitivity: shareOf(tp, ill),
    specificity: shareOf(tn, well),
    positive: ratioOf(tp, ill, fp, well),
    negative: ratioOf(fn, ill, tn, well),
  };
}
