/** What is first in sight: the part of the axis, and the lanes of a group together. */
import { group } from 'd3';
import { fromGestationWeeks, fromMonths, toMonths, type AxisDay } from '../age/axis.ts';
import type { ChartData, Stretch } from '../chart/model.ts';
import { WHOLE } from '../chart/viewport.ts';

/** Months after the last visit that stay in sight, so that what comes next is seen too. */
const AHEAD_MONTHS = 9;

/** From 20 weeks of gestation to some months past the last visit, at most the whole axis. */
export function firstSight(lastVisit: AxisDay | undefined): Stretch {
  if (lastVisit === undefined) return WHOLE;
  const until = Math.ceil(toMonths(lastVisit) + AHEAD_MONTHS);
  return { from: fromGestationWeeks(20), to: fromMonths(Math.max(12, until)) };
}

/** Lanes of one group side by side, groups in the order in which they first come. */
export const byGroup = (data: ChartData): ChartData => ({
  ...data,
  lanes: [...group(data.lanes, (lane) => lane.group).values()].flat(),
});
