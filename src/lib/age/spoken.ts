/** An age split into the parts it is spoken in. The words are in words/; the counting is here. */
import { DAYS_PER_WEEK } from './axis.ts';
import { calendarSpan, type CivilDate } from './civil.ts';

/**
 * Parts of an age counted from an origin (birth, or the due date for a corrected age).
 * Below 8 weeks it is spoken in weeks and days, from then in calendar months and whole weeks.
 */
export interface SpokenAge {
  /** Whether the date lies before the origin. */
  before: boolean;
  unit: 'weeks' | 'months';
  months: number;
  weeks: number;
  days: number;
}

const WEEKS_SPOKEN_BELOW_DAYS = 8 * DAYS_PER_WEEK;

/** The age on a date, counted by the calendar from an origin. */
export function spokenAge(origin: CivilDate, on: CivilDate, totalDays: number): SpokenAge {
  const before = totalDays < 0;
  const size = Math.abs(totalDays);
  if (before || size < WEEKS_SPOKEN_BELOW_DAYS)
    return {
      before,
      unit: 'weeks',
      months: 0,
      weeks: Math.floor(size / DAYS_PER_WEEK),
      days: size % DAYS_PER_WEEK,
    };
  const span = calendarSpan(origin, on);
  return {
    before: false,
    unit: 'months',
    months: span.months,
    weeks: Math.floor(span.days / DAYS_PER_WEEK),
    days: span.days % DAYS_PER_WEEK,
  };
}
