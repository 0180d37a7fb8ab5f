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

const ordersOfOne = (text: string): DateOrder[] =>
  DATE_ORDERS.filter((order) => readDate(text, order) !== undefined);

/** The dates that can be read at all: a cell that is no date in any order says nothing about the others. */
const readable = (dates: readonly string[]): string[] =>
  dates.filter((text) => ordersOfOne(text).length > 0);

/** The orders in which any of the dates can be read. */
export const ordersOf = (dates: readonly string[]): DateOrder[] =>
  DATE_ORDERS.filter((order) => dates.some((text) => readDate(text, order) !== undefined));

/** The order that is surely meant: the only one in which all can be read, or one of those that give the same days. */
export function sureOrder(dates: readonly string[]): DateOrder | undefined {
  const possible = ordersOf(dates);
  if (possible.length <= 1) return possible[0];
  const texts = readable(dates);
  const whole = DATE_ORDERS.filter((order) =>
    texts.every((text) => readDate(text, order) !== undefined),
  );
  const [first] = whole;
  if (first === undefined) return undefined;
  const alike = whole.every((order) =>
    texts.every((text) => readDate(text, order) === readDate(text, first)),
  );
  return alike ? first : undefined;
}

/**
 * The dates that show why the order has to be asked: one that is another day in another order, or else two
 * that no order reads both.
 */
export function doubtOf(dates: readonly string[]): readonly string[] {
  const texts = readable(dates);
  const twofold = texts.find(
    (text) => new Set(ordersOfOne(text).map((order) => readDate(text, order))).size > 1,
  );
  if (twofold !== undefined) return [twofold];
  const kinds = new Map(texts.toReversed().map((text) => [ordersOfOne(text).join(), text]));
  const apartFrom = (one: string): string | undefined =>
    [...kinds.values()].find((other) =>
      ordersOfOne(one).every((order) => readDate(other, order) === undefined),
    );
  const one = texts.find((text) => apartFrom(text) !== undefined);
  return one === undefined ? [] : [one, apartFrom(one) ?? ''];
}
