/**
 * The posterior of one course by counting through a daily grid: an event lies in the middle of a day, or is
 * never. Written apart from what it checks, and slow.
 */
import type { DayLikelihood } from '../../src/lib/judge/reading/course.ts';
import type { EventPrior } from '../../src/lib/judge/reading/prior.ts';

export interface GridEvent {
  /** The middle of each day; the last is never. */
  days: number[];
  mass: number[];
}

/** A prior on the grid, a `step` of days apart. */
export function gridOf({ pieces }: Pick<EventPrior, 'pieces'>, step = 1): GridEvent {
  const days: number[] = [140];
  const mass: number[] = [0];
  for (let day = 140; day < 1010; day += step) {
    days.push(day + step / 2);
    mass.push(0);
  }
  days.push(Infinity);
  mass.push(0);
  for (const { from, to, weight } of pieces) {
    if (from === Infinity) mass[mass.length - 1]! += weight;
    else if (from === to) mass[0]! += weight;
    else
      days.forEach((middle, k) => {
        if (k === 0 || middle === Infinity) return;
        const overlap = Math.min(to, middle + step / 2) - Math.max(from, middle - step / 2);
        if (overlap > 0) mass[k]! += (weight * overlap) / (to - from);
      });
  }
  return { days, mass };
}

/** Every pair of days with A before I (half of what falls on one day), or A never. */
export function pairsOf(
  appears: GridEvent,
  integrates: GridEvent,
  seen: readonly DayLikelihood[],
  visit: (a: number, i: number, weight: number) => void,
): number {
  let total = 0;
  const never = appears.mass.at(-1)!;
  const likely = (a: number, i: number): number =>
    seen.reduce((l, { day, ifThere, ifNot }) => l * (a <= day && day < i ? ifThere : ifNot), 1);
  appears.days.forEach((a, x) => {
    if (a === Infinity) {
      const weight = never * likely(a, Infinity);
      total += weight;
      visit(a, Infinity, weight);
      return;
    }
    integrates.days.forEach((i, y) => {
      if (i < a || (x === 0 && y === 0)) return;
      const weight = appears.mass[x]! * integrates.mass[y]! * (i === a ? 0.5 : 1) * likely(a, i);
      total += weight;
      if (weight > 0) visit(a, i, weight);
    });
  });
  return total;
}

/** P(A by a day) and P(I by a day) on the grid. */
export function bruteBy(
  appears: GridEvent,
  integrates: GridEvent,
  seen: readonly DayLikelihood[],
  day: number,
): { appears: number; integrates: number } {
  let [a, i] = [0, 0];
  const total = pairsOf(appears, integrates, seen, (onA, onI, weight) => {
    if (onA <= day) a += weight;
    if (onI <= day) i += weight;
  });
  return { appears: a / total, integrates: i / total };
}
