/**
 * Ages against published worked examples. Sources are named beside each row; "memory" marks a
 * figure that was recalled, not seen. Months in these sources are often 4-week months, so the
 * comparison is in days.
 */
import { describe, expect, test } from 'vitest';
import {
  addDays,
  calendarSpan,
  daysBetween,
  parseCivil,
  type CivilDate,
} from '../../src/lib/age/civil.ts';
import { agesOn, birthFromGestation, type Birth } from '../../src/lib/age/clocks.ts';
import { TERM_DAYS } from '../../src/lib/age/axis.ts';
import { DATING_SD_DAYS } from '../../src/lib/age/doubt.ts';
import { formatGestation, parseGestation } from '../../src/lib/age/gestation.ts';
import { en } from '../../src/lib/words/en.ts';

const born = parseCivil('2026-03-04')!;
const agesAt = (gestationDays: number, chronologicalDays: number, from: CivilDate = born) =>
  agesOn(
    birthFromGestation(from, gestationDays, 'unknown') as Birth,
    addDays(from, chronologicalDays),
  );

describe('American Academy of Pediatrics, Age terminology during the perinatal period, Pediatrics 2004;114:1362-1364', () => {
  test('33w1d and 10w5d make 43w6d postmenstrual (worked example, from memory)', () => {
    const ages = agesAt(parseGestation('33w1d')!, 10 * 7 + 5);
    expect(formatGestation(ages.postmenstrualDays)).toBe('43w6d');
    expect(ages.correctedDays).toBe(3 * 7 + 6); // by the definition: postmenstrual - 40 weeks
  });

  test('28 weeks at 24 months is 21 months corrected (whole months, from memory)', () => {
    const on = parseCivil('2028-03-04')!;
    const birth = birthFromGestation(born, 28 * 7, 'unknown') as Birth;
    expect(calendarSpan(birth.due, on).months).toBe(21);
    expect(agesOn(birth, on).counts).toBe('corrected');
  });

  test('completed weeks are never rounded up: 25w5d is 25 weeks (read)', () => {
    expect(Math.floor(parseGestation('25w5d')! / 7)).toBe(25);
  });
});

describe('published corrected ages', () => {
  test.each([
    ['university glossary, neonatal (CA1, read)', 30, 20 * 7, 70],
    ['UK primary-care reference (CA2, read)', 35, 8 * 7, 21],
    ['copy of an AAP family article (CA3, read; 24 wk called 6 months)', 28, 24 * 7, 84],
    ['US multiples charity (CA5, read)', 32, 12 * 7, 28],
    ['dietetics teaching page (CA6, read)', 34, 16 * 7, 70],
    ['parent feeding page (CA7, read: 8 weeks early, 10 weeks old)', 32, 70, 14],
    ['medical dictionary (CA8, read: 4 weeks early, 4 weeks 1 day old)', 36, 29, 1],
    [
      'The prematurity paradox, Pediatrics 2024;153(2):e2023063801 (CA9, read: 4 months early at birth)',
      24,
      0,
      -112,
    ],
  ])('%s', (_, weeks, days, corrected) => {
    expect(agesAt(weeks * 7, days).correctedDays).toBe(corrected);
  });

  test('Quebec charity for premature children (CA4, read): 32 weeks, 1 January to 1 July is 4 months', () => {
    const from = parseCivil('2023-01-01')!;
    const birth = birthFromGestation(from, 32 * 7, 'unknown') as Birth;
    expect(birth.due.slice(0, 7)).toBe('2023-02'); // "due at the end of February"
    expect(calendarSpan(birth.due, parseCivil('2023-07-01')!).months).toBe(4);
  });

  test.each([
    [
      'term taken as 37 weeks (parent page, read): 30 weeks at 10 weeks is 0, not 3 weeks',
      30,
      70,
      0,
    ],
    ['a ratio instead of a difference (web page, read): 32 weeks at 182 days is 126', 32, 182, 126],
    [
      'postmenstrual called corrected (dictionary, read): 27 weeks + 3 weeks is -10 weeks',
      27,
      21,
      -70,
    ],
  ])('not the published mistake: %s', (_, weeks, days, corrected) => {
    expect(agesAt(weeks * 7, days).correctedDays).toBe(corrected);
  });

  test('a negative corrected age is said as time before term', () => {
    expect(en.ages.correctedWords(agesAt(24 * 7, 0))).toBe('16 wk before term');
  });
});

describe('due dates: last period + 280 days (ACOG Committee Opinion 700, 2017)', () => {
  test.each([
    ['2001-03-14', '2001-12-19', '2001-12-21', 'obstetric reference A'],
    ['2011-08-03', '2012-05-09', '2012-05-10', 'obstetric reference C'],
    ['2015-05-22', '2016-02-26', '2016-02-29', 'obstetric reference B'],
    ['2016-05-22', '2017-02-26', '2017-03-01', 'obstetric reference B'],
  ])('from %s', (period, due, calendarRule) => {
    const last = parseCivil(period)!;
    expect(addDays(last, TERM_DAYS)).toBe(due);
    // the printed calendar rule (+7 days, -3 months, +1 year) runs up to 3 days later, never earlier
    const later = daysBetween(addDays(last, TERM_DAYS), parseCivil(calendarRule)!);
    expect(later).toBeGreaterThanOrEqual(0);
    expect(later).toBeLessThanOrEqual(3);
  });
});

describe('doubt in the dates: published 95 % half-widths / 1.96', () => {
  test.each<[keyof typeof DATING_SD_DAYS, number, string]>([
    ['assisted-conception', 1, 'family-practice dating page (read)'],
    ['ultrasound-first-trimester', 7, 'ACOG 700, +/- 5-7 days (memory)'],
    ['ultrasound-14w0d-21w6d', 10, 'ACOG 700, +/- 7-10 days (memory)'],
    ['ultrasound-22w0d-27w6d', 14, 'ACOG 700, +/- 10-14 days (memory)'],
    ['ultrasound-third-trimester', 30, 'ACOG 700, +/- 21-30 days (memory)'],
    ['newborn-exam', 3.8 * 7, 'Lee 2017, Ballard +/- 3.8 weeks (read)'],
  ])('%s', (method, halfWidth) => {
    expect(DATING_SD_DAYS[method]).toBeCloseTo(halfWidth / 1.96, 0);
  });

  test('last period: SD 8.0 days against a first-trimester scan, n 1867 (Hoffman 2008, read)', () => {
    expect(DATING_SD_DAYS['last-period']).toBe(8);
  });
});
