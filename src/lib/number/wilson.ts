/** The interval of a share that was counted. */

/** A 95 % interval of a share, 0 to 1. */
export interface ShareInterval {
  low: number;
  high: number;
}

/** The normal quantile of a two-sided 95 % interval, to the six places of Newcombe 1998. */
export const Z95 = 1.959964;

/**
 * Wilson's 95 % score interval for `hits` of `n` (n above 0), without continuity correction (Newcombe
 * 1998, method 3). `hits` may be fractional where only a rounded share was printed.
 */
export function wilson(hits: number, n: number): ShareInterval {
  const p = hits / n;
  const z2 = Z95 * Z95;
  const middle = (p + z2 / (2 * n)) / (1 + z2 / n);
  const half = (Z95 * Math.sqrt((p * (1 - p)) / n + z2 / (4 * n * n))) / (1 + z2 / n);
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}
