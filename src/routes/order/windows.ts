/** The windows of the two stations of a step, as thin bars on one axis. */
import { fromMonths, type AxisDay } from '$lib/age/axis.ts';
import type { Stretch } from '$lib/chart/model.ts';
import { LIMITS, WHOLE } from '$lib/chart/viewport.ts';
import type { Dated } from '$lib/judge/support.ts';

/** A source's window with its place: rows count from the top. */
export interface Bar {
  dated: Dated;
  row: number;
  half: 'before' | 'after';
}

export interface StepBars {
  bars: readonly Bar[];
  rows: number;
  /** The first row of the later station. */
  afterRow: number;
  /** The last day on which any source has the earlier station happen, and the first of the later. */
  beforeEnds: number | null;
  afterBegins: number | null;
  range: Stretch;
}

const earliestFirst = (a: Dated, b: Dated): number => a.from - b.from || a.to - b.to;
const GAP_ROWS = 1;

/** Both stations' windows, the earliest first in each, with a free row between. */
export function stepBars(before: readonly Dated[], after: readonly Dated[]): StepBars {
  const afterRow = before.length + GAP_ROWS;
  const bars = [
    ...before.toSorted(earliestFirst).map((dated, i): Bar => ({ dated, row: i, half: 'before' })),
    ...after
      .toSorted(earliestFirst)
      .map((dated, i): Bar => ({ dated, row: afterRow + i, half: 'after' })),
  ];
  const latest = Math.max(WHOLE.to, ...bars.map(({ dated }) => dated.to + 30));
  return {
    bars,
    rows: afterRow + after.length,
    afterRow,
    beforeEnds: before.length > 0 ? Math.max(...before.map((d) => d.to)) : null,
    afterBegins: after.length > 0 ? Math.min(...after.map((d) => d.from)) : null,
    range: {
      from: WHOLE.from,
      to: Math.min(latest, Math.min(LIMITS.to, fromMonths(36))) as AxisDay,
    },
  };
}
