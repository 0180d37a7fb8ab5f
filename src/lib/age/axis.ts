/**
 * The one scale everything is placed on: days since the first day of the last menstrual period.
 * Term, 40w0d, is day 280 (AAP 2004: estimated date of delivery = last period + 40 weeks).
 */

declare const axisDay: unique symbol;

/** Days since the first day of the last menstrual period; may be fractional. Term is 280. */
export type AxisDay = number & { readonly [axisDay]: 'AxisDay' };

/** Marks a plain number of days as a place on the axis. */
export const toAxisDay = (days: number): AxisDay => days as AxisDay;

/** 40w0d, in days. */
export const TERM_DAYS = 280;
export const TERM = TERM_DAYS as AxisDay;

export const DAYS_PER_WEEK = 7;

/** A month on the axis: 365.25 / 12 days (the UCUM month, "mo_j"). Calendar months are civil.ts. */
export const DAYS_PER_MONTH = 30.4375;

export const DAYS_PER_YEAR = 365.25;

/** Weeks of gestation (postmenstrual weeks) to a place on the axis. */
export const fromGestationWeeks = (weeks: number): AxisDay => (weeks * DAYS_PER_WEEK) as AxisDay;

/** Months after term (before term: negative) to a place on the axis. */
export const fromMonths = (months: number): AxisDay =>
  (TERM_DAYS + months * DAYS_PER_MONTH) as AxisDay;

/** A place on the axis in months after term; negative before term. */
export const toMonths = (day: AxisDay): number => (day - TERM_DAYS) / DAYS_PER_MONTH;

/** A place on the axis in weeks of gestation. */
export const toGestationWeeks = (day: AxisDay): number => day / DAYS_PER_WEEK;
