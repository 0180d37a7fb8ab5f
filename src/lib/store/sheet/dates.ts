/** Dates as sheets write them. Which order day and month stand in is asked where both could be. */
import { parseCivil, type CivilDate } from '../../age/civil.ts';

export const DATE_ORDERS = ['year-month-day', 'day-month-year', 'month-day-year'] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

const PARTS = /^(\d{1,4})([-/. ])(\d{1,2})\2(\d{1,4})(?:[ T]\d{1,2}:\d{2}(?::\d{2})?)?$/;

/** A year written with two digits is one of this century: no infant seen here was born in another. */
const fullYear = (year: string): string => (year.length === 2 ? `20${year}` : year);

/** Reads a date in an order; undefined when it is none, or does not exist. A time of day is left away. */
export function readDate(text: string, order: DateOrder): CivilDate | undefined {
  const match = PARTS.exec(text.trim().replace(/\.$/, ''));
  if (!match) return undefined;
  const [first = '', second = '', third = ''] = [match[1], match[3], match[4]];
  const [year, month, day] =
    order === 'year-month-day'
      ? [first, second, third]
      : order === 'day-month-year'
        ? [third, second, first]
        : [third, first, second];
  if (![2, 4].includes(year.length) || month.length > 2 || day.length > 2) return undefined;
  if (order === 'year-month-day' && year.length !== 4) return undefined;
  return parseCivil(`${fullYear(year)}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`);
}

const filled = (dates: readonly string[]): string[] => dates.filter((text) => text !== '');

/** The orders in which any of the dates can be read. */
export const ordersOf = (dates: readonly string[]): DateOrder[] =>
  DATE_ORDERS.filter((order) => filled(dates).some((text) => readDate(text, order) !== undefined));

/**
 * The order that is surely meant: the only one in which any date can be read, or those in which all can
 * be give the same days. A cell that is no date in any order says nothing about the others.
 */
export function sureOrder(dates: readonly string[]): DateOrder | undefined {
  const texts = filled(dates);
  const possible = ordersOf(texts);
  if (possible.length === 1) return possible[0];
  const whole = DATE_ORDERS.filter((order) =>
    texts.every((text) => readDate(text, order) !== undefined),
  );
  const [first] = whole;
  if (texts.length === 0 || first === undefined) return undefined;
  const alike = whole.every((order) =>
    texts.every((text) => readDate(text, order) === readDate(text, first)),
  );
  return alike ? first : undefined;
}
