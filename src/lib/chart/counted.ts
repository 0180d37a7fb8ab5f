/**
 * Counts of real infants on a lane's own scale: a point at the counted age and share, its 95 % interval as
 * a bar, the ages it spans as a line. Days across, 0 to -1 down, as a ridge is drawn.
 */
import { fromMonths, toAxisDay, type AxisDay } from '../age/axis.ts';
import type { SourcedCount } from '../atlas/atlas.ts';
import { printedDay } from '../atlas/printed.ts';
import { NEAR_DAYS, wilson } from '../judge/counts.ts';

export interface CountPoint {
  count: SourcedCount;
  /** First, middle and last of the counted ages. */
  from: AxisDay;
  day: AxisDay;
  to: AxisDay;
  /** Share of infants with the response, 0 to 1, and its interval; null where n was not printed. */
  share: number;
  interval: { low: number; high: number } | null;
}

/** Beyond this age the axis ends. */
const LAST_MONTH = 24;

/** The counts that are shares of infants with the response at an age of the axis, oldest age last. */
export function countPoints(counts: readonly SourcedCount[]): CountPoint[] {
  return counts
    .flatMap((count): CountPoint[] => {
      const { role, answer, complementary, percent, qualifier, unit, low, high, n } = count;
      if (role !== 'count' || answer === 'other' || unit === 'milestone') return [];
      if (percent === null || low === null || (qualifier !== '=' && qualifier !== '~')) return [];
      if (answer === 'not-elicited' && !complementary) return [];
      const [from, to] = [printedDay(low, unit), printedDay(high ?? low, unit)];
      if (from > fromMonths(LAST_MONTH)) return [];
      const share = (answer === 'elicited' ? percent : 100 - percent) / 100;
      const interval = n === null ? null : wilson(share * n, n);
      return [{ count, from, day: toAxisDay((from + to) / 2), to, share, interval }];
    })
    .sort((a, b) => a.day - b.day);
}

/** Whether a point is of infants within a month of an age. */
export const isNear = ({ from, to }: CountPoint, age: AxisDay): boolean =>
  Math.max(from - age, age - to) <= NEAR_DAYS;
