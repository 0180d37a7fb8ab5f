/**
 * Civil dates: a day in the calendar, without a time of day or a time zone that could shift it. The one
 * door to the language's own `Date`, which counts by the Gregorian calendar in UTC.
 */

declare const civilDate: unique symbol;

/** A date that exists, as `YYYY-MM-DD`. */
export type CivilDate = string & { readonly [civilDate]: 'CivilDate' };

const ISO = /^\d{4}-\d{2}-\d{2}$/;

const at = (date: string): Date => new Date(`${date}T00:00:00Z`);

const MS_PER_DAY = 86_400_000;

const civil = (moment: Date): CivilDate => moment.toISOString().split('T')[0] as CivilDate;

/** Reads `YYYY-MM-DD`; undefined when the form is another or the day does not exist (30 February). */
export function parseCivil(text: string): CivilDate | undefined {
  const trimmed = text.trim();
  if (!ISO.test(trimmed)) return undefined;
  const moment = at(trimmed);
  // a day that a month does not have is read as one of the next, or not at all
  return !Number.isNaN(moment.getTime()) && civil(moment) === trimmed
    ? (trimmed as CivilDate)
    : undefined;
}

/** Whole days from one date to another; negative when `to` is earlier. */
export const daysBetween = (from: CivilDate, to: CivilDate): number =>
  (at(to).getTime() - at(from).getTime()) / MS_PER_DAY; // in UTC every day has 24 hours

/** The date a number of whole days later (or earlier). */
export const addDays = (date: CivilDate, days: number): CivilDate =>
  civil(new Date(at(date).getTime() + days * MS_PER_DAY));

/** The date a number of calendar months later; the 31st becomes the last day of a shorter month. */
export function addMonths(date: CivilDate, months: number): CivilDate {
  const moment = at(date);
  const day = moment.getUTCDate();
  moment.setUTCMonth(moment.getUTCMonth() + months + 1, 0); // the last day of the month it comes to
  moment.setUTCDate(Math.min(day, moment.getUTCDate()));
  return civil(moment);
}

/** A span counted by the calendar: whole months, then the days that are left. Both carry the sign. */
export interface CalendarSpan {
  months: number;
  days: number;
}

/**
 * The span from one date to another as calendar months and days: the months are the most that fit,
 * the days are what is left after adding them. A month from the 31st ends on the last day of a
 * shorter month, as in `addMonths`. Backwards it is the mirrored span, negated.
 */
export function calendarSpan(from: CivilDate, to: CivilDate): CalendarSpan {
  if (daysBetween(from, to) < 0) {
    const { months, days } = calendarSpan(to, from);
    return { months: 0 - months, days: 0 - days };
  }
  const [first, last] = [partsOf(from), partsOf(to)];
  const most = 12 * (last.year - first.year) + last.month - first.month;
  const months = daysBetween(addMonths(from, most), to) < 0 ? most - 1 : most;
  return { months, days: daysBetween(addMonths(from, months), to) };
}

/** Year, month (1-12) and day of a date, for wording it. */
export function partsOf(date: CivilDate): { year: number; month: number; day: number } {
  const moment = at(date);
  return {
    year: moment.getUTCFullYear(),
    month: moment.getUTCMonth() + 1,
    day: moment.getUTCDate(),
  };
}
