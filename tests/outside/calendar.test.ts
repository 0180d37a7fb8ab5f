/** Dates and ages against two general-purpose date libraries: the Temporal polyfill, and luxon. */
import { DateTime } from 'luxon';
import { Temporal } from 'temporal-polyfill';
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
import { agesOn, birthFromGestation, type Birth } from '../../src/lib/age/clocks.ts';
import { spokenAge } from '../../src/lib/age/spoken.ts';

/** A small linear congruential generator, so that the same dates are drawn each time. */
function draw(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const plain = (date: CivilDate) => Temporal.PlainDate.from(date);
const corner = [
  '2023-12-31',
  '2024-01-01',
  '2024-02-28',
  '2024-02-29',
  '2024-03-01',
  '2000-02-29',
  '2100-02-28',
  '2025-10-26',
  '2026-03-29',
  '0001-01-01',
  '0099-12-31',
  '1900-02-28',
];

describe('against Temporal, on 5000 random dates and the corners of the calendar', () => {
  const next = draw(20260304);
  const dates = [
    ...corner.map((text) => parseCivil(text)!),
    ...Array.from({ length: 5000 }, () => addDays(parseCivil('1970-01-01')!, next(50_000))),
  ];

  test('days between, days and months added', () => {
    for (const date of dates) {
      const days = next(1500);
      const months = next(40);
      const later = addDays(date, days);
      expect(later).toBe(plain(date).add({ days }).toString());
      expect(addMonths(date, months)).toBe(plain(date).add({ months }).toString());
      expect(daysBetween(date, later)).toBe(
        plain(date).until(plain(later), { largestUnit: 'day' }).days,
      );
    }
  });

  test('read, in parts, and written out in the languages of a family', () => {
    for (const date of dates) {
      const moment = DateTime.fromISO(date, { zone: 'utc' });
      expect(parseCivil(date)).toBe(date);
      const { year, month, day } = moment;
      expect(partsOf(date)).toEqual({ year, month, day });
    }
    for (const date of dates.slice(0, 100))
      for (const tag of ['en-GB', 'es', 'de'])
        expect(writtenDate(date, tag)).toBe(
          new Intl.DateTimeFormat(tag, { dateStyle: 'long', timeZone: 'UTC' }).format(
            new Date(`${date}T00:00:00Z`),
          ),
        );
  });

  test('days that no month has are no dates', () => {
    for (const { year, month } of dates.map(partsOf))
      for (const day of [0, 29, 30, 31, 32]) {
        const [y, m, d] = [year, month, day].map((part, at) =>
          String(part).padStart(at === 0 ? 4 : 2, '0'),
        );
        const text = `${y}-${m}-${d}`;
        const { isValid } = DateTime.fromISO(text, { zone: 'utc' });
        expect(parseCivil(text)).toBe(isValid ? text : undefined);
      }
  });

  /**
   * Months and days by Temporal, brought to our convention: a month from the 31st ends on the last
   * day of a shorter month (so adding months and counting them agree), where Temporal waits for the
   * next day. The two differ only there.
   */
  const spanByTemporal = (from: CivilDate, to: CivilDate) => {
    const [a, b] = [plain(from), plain(to)];
    const span = a.until(b, { largestUnit: 'month' });
    const full = a.add({ months: span.months + 1 });
    const ended = Temporal.PlainDate.compare(full, b) === 0 && full.day !== a.day;
    return ended ? { months: span.months + 1, days: 0 } : { months: span.months, days: span.days };
  };

  test('calendar months and days', () => {
    for (const date of dates) {
      const later = addDays(date, next(1500));
      expect(calendarSpan(date, later)).toEqual(spanByTemporal(date, later));
    }
  });

  test('the four ages, and which counts', () => {
    for (const born of dates) {
      const gestation = 154 + next(161);
      const birth = birthFromGestation(born, gestation, 'unknown') as Birth;
      const on = addDays(born, next(1200));
      const ages = agesOn(birth, on);
      const due = plain(born).add({ days: 280 - gestation });
      expect(birth.due).toBe(due.toString());
      const since = plain(born).until(plain(on), { largestUnit: 'day' }).days;
      const corrected = due.until(plain(on), { largestUnit: 'day' }).days;
      expect(ages).toMatchObject({ chronologicalDays: since, correctedDays: corrected });
      const within = Temporal.PlainDate.compare(plain(on), plain(born).add({ months: 24 })) <= 0;
      expect(ages.counts).toBe(gestation < 259 && within ? 'corrected' : 'chronological');
      if (corrected >= 56) {
        const span = spanByTemporal(birth.due, on);
        expect(spokenAge(birth.due, on, corrected)).toMatchObject({
          months: span.months,
          weeks: Math.floor(span.days / 7),
        });
      }
    }
  });

  test('a date exists exactly when Temporal says so', () => {
    for (let i = 0; i < 5000; i++) {
      const text = `${1990 + next(60)}-${String(next(14)).padStart(2, '0')}-${String(next(33)).padStart(2, '0')}`;
      let exists = true;
      try {
        Temporal.PlainDate.from(text, { overflow: 'reject' });
      } catch {
        exists = false;
      }
      expect(parseCivil(text) !== undefined, text).toBe(exists);
    }
  });
});
