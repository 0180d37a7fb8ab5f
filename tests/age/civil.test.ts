import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  addMonths,
  calendarSpan,
  daysBetween,
  parseCivil,
  partsOf,
  type CivilDate,
} from '../../src/lib/age/civil.ts';
import { writtenDate } from '../../src/lib/age/written.ts';

const civil = (text: string): CivilDate => {
  const date = parseCivil(text);
  if (!date) throw new Error(`${text} is no date`);
  return date;
};
const anyDate = fc
  .integer({ min: 0, max: 60_000 })
  .map((days) => addDays(civil('1940-01-01'), days));

describe('civil dates', () => {
  test.each([
    '2026-02-30',
    '2025-02-29',
    '2026-13-01',
    '2026-1-1',
    '04.03.2026',
    '',
    '2026-03-04T10:00',
    '+010000-01-01',
    '2026-04-31',
  ])('refuses %j', (text) => {
    expect(parseCivil(text)).toBeUndefined();
  });

  test.each([
    ['2024-02-29', '2024-02-29'],
    [' 2026-03-04 ', '2026-03-04'],
  ])('takes %j', (text, date) => {
    expect(parseCivil(text)).toBe(date);
  });

  test('adding days and counting them back is the identity', () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: -20_000, max: 20_000 }), (date, days) => {
        expect(daysBetween(date, addDays(date, days))).toBe(days);
      }),
    );
  });

  test('a calendar span adds up to the later date', () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: 0, max: 3000 }), (date, days) => {
        const later = addDays(date, days);
        const span = calendarSpan(date, later);
        expect(addDays(addMonths(date, span.months), span.days)).toBe(later);
        expect(span.days).toBeLessThan(31);
      }),
    );
  });

  test.each([
    ['2026-01-31', '2026-02-28', { months: 1, days: 0 }],
    ['2024-01-31', '2024-02-29', { months: 1, days: 0 }],
    ['2025-12-31', '2026-01-01', { months: 0, days: 1 }],
    ['2026-03-04', '2026-02-04', { months: -1, days: 0 }],
    ['2026-03-31', '2026-02-27', { months: -1, days: -4 }],
  ])('from %s to %s', (from, to, span) => {
    expect(calendarSpan(civil(from), civil(to))).toEqual(span);
  });

  test('in parts, and written out', () => {
    expect(partsOf(civil('2026-05-18'))).toEqual({ year: 2026, month: 5, day: 18 });
    expect(writtenDate(civil('2026-05-18'), 'en-GB')).toBe('18 May 2026');
    expect(writtenDate(civil('2026-01-01'), 'es')).toBe('1 de enero de 2026');
  });
});
