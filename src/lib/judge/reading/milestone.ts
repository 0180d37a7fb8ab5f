/**
 * When a milestone is reached: log-normal in months after term, through the published 1st and 99th
 * percentile (WHO 2006). What stays has no second event, so it is a pair of which the second is never.
 */
import { DAYS_PER_MONTH, fromMonths, TERM, toMonths, type AxisDay } from '../../age/axis.ts';
import type { Milestone, MilestoneWindow } from '../../atlas/types.ts';
import { below, density } from '../normal.ts';
import { FIRST_DAY, LAST_DAY, ODD, ODD_NEVER, Z90, Z99 } from './constants.ts';
import type { PairPrior, Row } from './prior.ts';

/** Location and scale of the logarithm of the age in months. */
export interface LogNormal {
  mu: number;
  sigma: number;
}

export const logNormalOf = ({ p1Months, p99Months }: MilestoneWindow): LogNormal => ({
  mu: Math.log(p1Months * p99Months) / 2,
  sigma: Math.log(p99Months / p1Months) / (2 * Z99),
});

/** The age in months by which a share has reached it, given the normal quantile of the share. */
export const monthsAt = ({ mu, sigma }: LogNormal, z: number): number => Math.exp(mu + sigma * z);

/**
 * The density is smooth but for the ends of its uniform part. It is integrated by these parts of a standard
 * deviation, as far out as a double has anything of it: days may make a tail all that is left.
 */
const KNOTS_TO = 7.5;
const KNOTS_EVERY = 0.75;

/** The prior of a milestone; undefined for one without a published window. @param odd as for a reflex */
export function milestonePrior(milestone: Milestone, odd = ODD): PairPrior | undefined {
  if (!milestone.window) return undefined;
  const { mu, sigma } = logNormalOf(milestone.window);
  const zAt = (day: number): number => (Math.log(toMonths(day as AxisDay)) - mu) / sigma;
  const broad = (odd * (1 - ODD_NEVER)) / (LAST_DAY - TERM);
  const by = (day: number): number =>
    day <= TERM ? 0 : (1 - odd) * below(zAt(day)) + broad * (day - TERM);
  const end = by(LAST_DAY);
  const knots: number[] = [FIRST_DAY, TERM, LAST_DAY];
  for (let z = -KNOTS_TO; z <= KNOTS_TO; z += KNOTS_EVERY) {
    const day = fromMonths(monthsAt({ mu, sigma }, z));
    if (day < LAST_DAY) knots.push(day);
  }
  const days = Float64Array.from(knots).sort();
  return {
    days,
    neverA: 1 - end,
    neverI: 1,
    possible: 1,
    datedA: true,
    datedI: true,
    at(day: number, out: Row): void {
      const inside = day > TERM && day < LAST_DAY;
      out.a = day >= LAST_DAY ? end : by(day);
      out.fa = inside
        ? ((1 - odd) * density(zAt(day))) / (sigma * toMonths(day as AxisDay) * DAYS_PER_MONTH) +
          broad
        : 0;
      out.i = out.m = out.fi = 0;
    },
  };
}

/** What a milestone that is not seen at an age asks for: past the 99th percentile more than past the 90th. */
export function milestoneAsks(
  window: MilestoneWindow,
  ageDays: AxisDay,
): 'discuss' | 'watch' | undefined {
  const months = toMonths(ageDays);
  if (months > window.p99Months) return 'discuss';
  return months > monthsAt(logNormalOf(window), Z90) ? 'watch' : undefined;
}
