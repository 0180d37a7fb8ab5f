/** An age split into the parts it is spoken in: weeks and days below 8 weeks, then calendar months. */
import { describe, expect, test } from 'vitest';
import {
  fromGestationWeeks,
  fromMonths,
  toAxisDay,
  toGestationWeeks,
  toMonths,
} from '../../src/lib/age/axis.ts';
import { addDays, parseCivil } from '../../src/lib/age/civil.ts';
import { birthFromGestation } from '../../src/lib/age/clocks.ts';
import { isDatingMethod } from '../../src/lib/age/doubt.ts';
import { spokenAge } from '../../src/lib/age/spoken.ts';

const origin = parseCivil('2026-03-01')!;
const spoken = (days: number) => spokenAge(origin, addDays(origin, days), days);

describe('an age as it is spoken', () => {
  test.each([
    [0, { before: false, unit: 'weeks', weeks: 0, days: 0, months: 0 }],
    [6, { before: false, unit: 'weeks', weeks: 0, days: 6 }],
    [7, { before: false, unit: 'weeks', weeks: 1, days: 0 }],
    [55, { before: false, unit: 'weeks', weeks: 7, days: 6 }],
    // 1 March and 56 days: 26 April, a month and 25 days on
    [56, { before: false, unit: 'months', months: 1, weeks: 3, days: 4 }],
    // 1 March and 61 days: 1 May
    [61, { before: false, unit: 'months', months: 2, weeks: 0, days: 0 }],
    [-1, { before: true, unit: 'weeks', weeks: 0, days: 1 }],
    // before the origin it is spoken in weeks, however long
    [-80, { before: true, unit: 'weeks', weeks: 11, days: 3 }],
  ])('%i days', (days, parts) => {
    expect(spoken(days)).toMatchObject(parts);
  });
});

test('a place on the axis is told in months after term and in weeks of gestation', () => {
  expect(toMonths(toAxisDay(280))).toBe(0);
  expect(toMonths(fromMonths(7.5))).toBeCloseTo(7.5, 12);
  expect(toMonths(toAxisDay(280 - 30.4375))).toBe(-1);
  expect(toGestationWeeks(toAxisDay(280))).toBe(40);
  expect(toGestationWeeks(fromGestationWeeks(31))).toBe(31);
});

test.each([
  [154, true],
  [314, true],
  [153, false],
  [315, false],
])('born at %i days of gestation is taken: %s', (days, taken) => {
  expect('born' in birthFromGestation(origin, days, 'unknown')).toBe(taken);
});

test('a way of dating is known by its name', () => {
  expect(isDatingMethod('last-period')).toBe(true);
  expect(isDatingMethod('Last-period')).toBe(false);
  expect(isDatingMethod('toString')).toBe(false);
});
