/** The part of the axis that is first in sight. */
import { fromGestationWeeks, fromMonths, toMonths, type AxisDay } from '../age/axis.ts';
import type { Stretch } from '../chart/model.ts';
import { WHOLE } from '../chart/viewport.ts';

/** Months after the last visit that stay in sight, so that what comes next is seen too. */
const AHEAD_MONTHS = 9;

/** From 20 weeks of gestation to some months past the last visit, at most the whole axis. */
export function firstSight(lastVisit: AxisDay | undefined): Stretch {
  if (lastVisit === undefined) return WHOLE;
  const until = Math.ceil(toMonths(lastVisit) + AHEAD_MONTHS);
  return { from: fromGestationWeeks(20), to: fromMonths(Math.max(12, until)) };
}
