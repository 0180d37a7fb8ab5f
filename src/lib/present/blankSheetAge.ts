/** The age a sheet without a child is made for, from what is typed. */
import { DAYS_PER_MONTH, fromMonths, TERM_DAYS, toAxisDay, type AxisDay } from '../age/axis.ts';
import type { CorrectionLimits } from '../age/clocks.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS, parseGestation } from '../age/gestation.ts';

/** How an age is counted: months from the due date, months from birth, or weeks from the last period. */
export const AGE_CLOCKS = ['corrected', 'birth', 'gestation'] as const;
export type AgeClock = (typeof AGE_CLOCKS)[number];

export type BlankProblem = 'bad-gestation' | 'bad-months' | 'bad-postmenstrual' | 'before-birth';

export interface BlankAge {
  /** Where the age that counts lies. */
  axisDay: AxisDay;
  counts: 'corrected' | 'chronological';
  gestationalDays: number;
}

const MOST_MONTHS = 60;

/** Days since the last period, by the clock the age is typed in; undefined when it is none. */
function postmenstrual(text: string, clock: AgeClock, gestationalDays: number): number | undefined {
  if (clock === 'gestation') return parseGestation(text);
  const months = /^-?\d{1,2}(?:[.,]\d)?$/.test(text.trim())
    ? Number(text.trim().replace(',', '.'))
    : NaN;
  if (!(Math.abs(months) <= MOST_MONTHS)) return undefined;
  return clock === 'corrected' ? fromMonths(months) : gestationalDays + months * DAYS_PER_MONTH;
}

/**
 * The age that counts, by the same rule as for a child: corrected when born before the limit and no
 * older than the correction lasts, else from birth. Months are of 30.4375 days, since no date is known.
 */
export function blankAge(
  gestation: string,
  age: string,
  clock: AgeClock,
  { pretermBelowDays, untilMonths }: CorrectionLimits,
): BlankAge | BlankProblem {
  const gestationalDays = parseGestation(gestation);
  if (
    gestationalDays === undefined ||
    gestationalDays < MIN_GESTATION_DAYS ||
    gestationalDays > MAX_GESTATION_DAYS
  )
    return 'bad-gestation';
  const days = postmenstrual(age, clock, gestationalDays);
  if (days === undefined) return clock === 'gestation' ? 'bad-postmenstrual' : 'bad-months';
  const chronological = days - gestationalDays;
  if (chronological < 0) return 'before-birth';
  const isCorrected =
    gestationalDays < pretermBelowDays && chronological <= untilMonths * DAYS_PER_MONTH;
  return {
    axisDay: toAxisDay(isCorrected ? days : TERM_DAYS + chronological),
    counts: isCorrected ? 'corrected' : 'chronological',
    gestationalDays,
  };
}
