/**
 * Civil dates: a day in the calendar, without a time of day or a time zone that could shift it.
 * The one door to luxon.
 */
import { DateTime } from 'luxon';

declare const civilDate: unique symbol;

/** A date that exists, as `YYYY-MM-DD`. */
export type CivilDate = string & { readonly [civilDate]: 'CivilDate' };

const ISO = /^\d{4}-\d{2}-\d{2}$/;

/** Reading a date is the slow part of every count; a clinic's dates repeat, so some are kept. */
const KEPT = 4096;
const kept = new Map<CivilDate, DateTime>();

function at(date: CivilDate): DateTime {
  let moment = kept.get(date);
  if (!moment) {
    if (kept.size >= KEPT) kept.clear();
    kept.set(date, (moment = DateTime.fromISO(date, { zone: 'utc' })));
  }
  return moment;
}

const MS_PER_DAY = 86_400_000;

/** Reads `YYYY-MM-DD`; undefined when the form is another or the day does not exist (30 February). */
export function parseCivil(text: string): CivilDate | undefined {
  const trimmed = text.trim();
  if (!ISO.test(trimmed)) return undefined;
  return DateTime.fromISO(trimmed, { zone: 'utc' }).isValid ? (trimmed as CivilDate) : undefined;
}

/** Whole days from one date to another; negative when `to` is earlier. */
export const daysBetween = (from: CivilDate, to: CivilDate): number =>
  Math.round((at(to).toMillis() - at(from).toMillis()) / MS_PER_DAY); // in UTC every day has 24 hours

/** The date a number of whole days later (or earlier). */
export const addDays = (date: CivilDate, days: number): CivilDate =>
  at(date).plus({ days }).toISODate() as CivilDate;

/** The date a number of calendar months later; the 31st becomes the last day of a shorter month. */
export const addMonths = (date: CivilDate, months: number): CivilDate =>
  at(date).plus({ months }).toISODate() as CivilDate;

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
  const { months, days } = at(to).diff(at(from), ['months', 'days']).toObject();
  return { months: Math.trunc(months ?? 0), days: Math.round(days ?? 0) };
}

/** A date written out in a language: `18 May 2026`, `18 de mayo de 2026`. @param tag as in BCP 47 */
export const writtenDate = (date: CivilDate, tag: string): string =>
  at(date).setLocale(tag).toLocaleString({ day: 'numeric', month: 'long', year: 'numeric' });

/** Year, month (1-12) and day of a date, for wording it. */
export function partsOf(date: CivilDate): { year: number; month: number; day: number } {
  const { year, month, day } = at(date);
  return { year, month, day };
}
