/**
 * A lane's ridge: its height is the mean expectation of the sources that speak. Between two corners
 * of any source that mean runs straight, so the corners are all that is needed, and it is exact.
 */
import { toAxisDay } from '../age/axis.ts';
import { readAt, totalsOf, type Compiled } from '../judge/expectation.ts';
import { ESTABLISHED } from '../judge/phases.ts';
import type { RidgePiece } from './model.ts';
import { straight, type Point } from './outline.ts';
import { LIMITS } from './viewport.ts';

/** Beyond every limit: a lifelong ridge ends here, and always runs off the right edge. */
export const BEYOND_DAY = LIMITS.to + 400;

const TINY = 1e-9;

/** The pieces of a ridge in their order. Where no source speaks, or all expect nothing, there is none. */
export function ridgeOf(compiled: Compiled): RidgePiece[] {
  const corners = new Set<number>();
  for (const edge of compiled.edges) if (Number.isFinite(edge)) corners.add(edge);
  const days = [...corners].sort((a, b) => a - b);
  const pieces: RidgePiece[] = [];
  days.forEach((from, index) => {
    const to = days[index + 1] ?? Math.max(BEYOND_DAY, from + 1);
    const middle = totalsOf(readAt(compiled, (from + to) / 2, 0));
    if (Number.isNaN(middle.meanExpectation)) return;
    const rise = totalsOf(readAt(compiled, from, 0)).meanExpectation;
    const fall = 2 * middle.meanExpectation - rise; // straight between corners
    if (rise < TINY && fall < TINY) return;
    pieces.push({
      from: toAxisDay(from),
      to: toAxisDay(to),
      rise: Math.max(0, rise),
      fall: Math.max(0, fall),
      agreed: middle.phases[ESTABLISHED]! > middle.speaking - TINY,
    });
  });
  return pieces;
}

/** The mean expectation a ridge shows at a day, 0 to 1; 0 where there is no ridge. */
export function heightAt(ridge: readonly RidgePiece[], day: number): number {
  const piece = ridge.find((p) => day >= p.from && day < p.to);
  if (!piece) return 0;
  return piece.rise + ((piece.fall - piece.rise) * (day - piece.from)) / (piece.to - piece.from);
}

/** The first and last day a ridge stands at one half or more; infinite where it never does. */
export function halfHeights(ridge: readonly RidgePiece[]): { first: number; last: number } {
  let first = Infinity;
  let last = -Infinity;
  for (const { from, to, rise, fall } of ridge) {
    const cross = rise === fall ? from : from + ((0.5 - rise) / (fall - rise)) * (to - from);
    if (rise < 0.5 && fall < 0.5) continue;
    first = Math.min(first, rise >= 0.5 ? from : cross);
    last = Math.max(last, fall >= 0.5 ? (to >= BEYOND_DAY ? Infinity : to) : cross);
  }
  return { first, last };
}

/**
 * The outline in runs without a gap: days across, heights from 0 at the baseline up to -1. The lane's
 * group sets the height in pixels.
 */
function outline(pieces: readonly RidgePiece[]): Point[][] {
  const runs: Point[][] = [];
  let end = NaN;
  for (const { from, to, rise, fall } of pieces) {
    if (from !== end) runs.push([]);
    const run = runs.at(-1)!;
    const last = run.at(-1);
    if (last?.[0] !== from || last[1] !== -rise) run.push([from, -rise]);
    run.push([to, -fall]);
    end = to;
  }
  return runs;
}

const DIGITS = 4;

const stroked = (runs: readonly Point[][]): string =>
  runs.map((run) => straight(run, DIGITS)).join('');

/** Each run and back along the baseline. */
const filled = (runs: readonly Point[][]): string =>
  runs
    .map((run) => {
      const back = run.map(([day]): Point => [day, 0]).reverse();
      return `${straight([...run, ...back], DIGITS)}Z`;
    })
    .join('');

export interface RidgePaths {
  area: string;
  line: string;
  /** The part where every speaking source says established. */
  agreed: string;
}

export function ridgePaths(ridge: readonly RidgePiece[]): RidgePaths {
  const runs = outline(ridge);
  return {
    area: filled(runs),
    line: stroked(runs),
    agreed: filled(outline(ridge.filter((piece) => piece.agreed))),
  };
}
