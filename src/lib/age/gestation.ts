/** Gestational age at birth: completed weeks and days since the first day of the last period. */
import { DAYS_PER_WEEK } from './axis.ts';

/** The earliest and latest gestation at birth that is taken, in days: 22w0d and 44w6d. */
export const MIN_GESTATION_DAYS = 22 * DAYS_PER_WEEK;
export const MAX_GESTATION_DAYS = 44 * DAYS_PER_WEEK + 6;

const WEEKS = /^(\d{1,2})\s*(?:w|wks?|weeks?)?$/i;
const WEEKS_AND_DAYS = /^(\d{1,2})\s*(?:(?:w|wks?|weeks?)\s*\+?|\+|\s)\s*([0-6])\s*(?:d|days?)?$/i;

/**
 * Reads a gestation such as `33w1d`, `33+1`, `33 1`, `33w` or `33`, in days.
 * Undefined when it is none of these; the range is not checked here.
 */
export function parseGestation(text: string): number | undefined {
  const trimmed = text.trim();
  const match = WEEKS.exec(trimmed) ?? WEEKS_AND_DAYS.exec(trimmed);
  if (!match) return undefined;
  return Number(match[1]) * DAYS_PER_WEEK + Number(match[2] ?? 0);
}

/** Days of gestation as the trade writes them: 232 is `33w1d`. */
export const formatGestation = (days: number): string =>
  `${Math.floor(days / DAYS_PER_WEEK)}w${days % DAYS_PER_WEEK}d`;
