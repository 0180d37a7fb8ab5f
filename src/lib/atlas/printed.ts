/** Printed ages turned into days on the axis. */
import {
  DAYS_PER_MONTH,
  DAYS_PER_WEEK,
  DAYS_PER_YEAR,
  TERM_DAYS,
  toAxisDay,
  type AxisDay,
} from '../age/axis.ts';
import type { Printed, PrintedUnit } from './types.ts';

/** From one day to a later (or the same) day on the axis. */
export interface Span {
  from: AxisDay;
  to: AxisDay;
}

const UNIT_DAYS: Readonly<Record<PrintedUnit, number>> = {
  wkPMA: DAYS_PER_WEEK,
  mo: DAYS_PER_MONTH,
  wk: DAYS_PER_WEEK,
  d: 1,
  y: DAYS_PER_YEAR,
};

/** A printed number in its unit as a place on the axis. Weeks of gestation count from the last period. */
export const printedDay = (value: number, unit: PrintedUnit): AxisDay =>
  toAxisDay((unit === 'wkPMA' ? 0 : TERM_DAYS) + value * UNIT_DAYS[unit]);

/** The step between the numbers a single age could have been printed as: 2 -> 1, 2.5 -> 0.1. */
const precisionOf = (value: number): number => {
  const decimals = String(value).split('.')[1]?.length ?? 0;
  return 10 ** -decimals;
};

/**
 * The days a printed age stands for. A range is taken as printed; a single age stands for that age
 * to the precision it was printed in: 2 months is 1.5 to 2.5 months, 28 weeks 27.5 to 28.5 weeks.
 * Undefined for an open range ("later than").
 */
export function printedSpan(printed: Printed): Span | undefined {
  const { low, high, unit } = printed;
  if (high === null) return undefined;
  const half = low === high ? precisionOf(low) / 2 : 0;
  return { from: printedDay(low - half, unit), to: printedDay(high + half, unit) };
}

/** Whether an appearance means "there by term": at birth, or hours or days after it. */
export const isByTerm = (printed: Printed): boolean =>
  printed.unit === 'd' || (printed.unit !== 'wkPMA' && printed.low === 0 && printed.high === 0);
