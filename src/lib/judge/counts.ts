/** Counts of real infants near an age, with their interval. A count stands beside a verdict, never in it. */
import { DAYS_PER_MONTH, type AxisDay } from '../age/axis.ts';
import type { SourcedCount } from '../atlas/atlas.ts';
import { printedDay } from '../atlas/printed.ts';
import { wilson, type ShareInterval } from '../number/wilson.ts';

export { wilson, type ShareInterval };

/** How far from an age a count still stands beside it: a month. A choice of ours. */
export const NEAR_DAYS = DAYS_PER_MONTH;

export interface NearCount {
  count: SourcedCount;
  /** Days between the age and the counted ages; 0 when it lies within them. */
  distanceDays: number;
  /** Undefined where n or an exact share was not printed. */
  interval?: ShareInterval;
}

/** Whether the counted ages are of infants at all, rather than of schoolchildren or at a milestone. */
const isInfancy = (count: SourcedCount): boolean =>
  count.unit !== 'milestone' && count.low !== null && (count.unit === 'wkPMA' || count.low <= 24);

/** The counts of a reflex near an age, nearest first. */
export function countsNear(counts: readonly SourcedCount[], age: AxisDay): NearCount[] {
  return counts
    .filter(isInfancy)
    .map((count): NearCount => {
      const unit = count.unit === 'wkPMA' ? 'wkPMA' : 'mo';
      const from = printedDay(count.low ?? 0, unit);
      const to = printedDay(count.high ?? count.low ?? 0, unit);
      const distanceDays = Math.max(0, from - age, age - to);
      const exact = count.percent !== null && (count.qualifier === '=' || count.qualifier === '~');
      const interval =
        exact && count.n !== null && count.percent !== null
          ? wilson((count.percent / 100) * count.n, count.n)
          : undefined;
      return { count, distanceDays, ...(interval ? { interval } : {}) };
    })
    .filter((near) => near.distanceDays <= NEAR_DAYS)
    .sort((a, b) => a.distanceDays - b.distanceDays);
}

/**
 * The least share, per cent, that a count gives an answer, where it says one. A count of the other answer
 * serves where everyone else gave this one.
 */
export function shareOf(count: SourcedCount, elicited: boolean): number | undefined {
  const { percent, qualifier, answer, complementary } = count;
  if (percent === null || answer === 'other') return undefined;
  const same = (answer === 'elicited') === elicited;
  if (!same && !complementary) return undefined;
  // "over half" is the least share of its own answer, "under half" of the other one
  if (qualifier === (same ? '<' : '>')) return undefined;
  return same ? percent : 100 - percent;
}
