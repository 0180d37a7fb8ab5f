import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  addMonths,
  daysBetween,
  parseCivil,
  type CivilDate,
} from '../../src/lib/age/civil.ts';
import {
  agesOn,
  birthFromDue,
  birthFromGestation,
  dateAtAxisDay,
  DEFAULT_LIMITS,
  type Birth,
} from '../../src/lib/age/clocks.ts';
import { DATING_METHODS, DATING_SD_DAYS } from '../../src/lib/age/doubt.ts';
import { formatGestation, parseGestation } from '../../src/lib/age/gestation.ts';
import { toAxisDay } from '../../src/lib/age/axis.ts';

const civil = (text: string): CivilDate => parseCivil(text)!;
const born = (date: string, gestation: string, dating: Birth['dating'] = 'last-period'): Birth => {
  const birth = birthFromGestation(civil(date), parseGestation(gestation)!, dating);
  if ('code' in birth) throw new Error(birth.code);
  return birth;
};

describe('gestation', () => {
  test.each([
    ['33w1d', 232],
    ['33+1', 232],
    ['33 1', 232],
    ['33w', 231],
    ['33', 231],
    ['33 weeks 1 day', 232],
    [' 33w1d ', 232],
  ])('%s is %i days', (text, days) => {
    expect(parseGestation(text)).toBe(days);
  });

  test.each(['', 'w', '33w7d', '33.5', '-33', '333', '33w1d2', 'thirty'])('refuses %j', (text) => {
    expect(parseGestation(text)).toBeUndefined();
  });

  test('writing and reading a gestation is the identity', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 320 }), (days) => {
        expect(parseGestation(formatGestation(days))).toBe(days);
      }),
    );
  });
});

describe('the four ages', () => {
  test('the due date and the gestation say the same', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 154, max: 314 }),
        fc.integer({ min: 0, max: 20_000 }),
        fc.integer({ min: 0, max: 2000 }),
        (gestation, offset, later) => {
          const date = addDays(civil('1990-01-01'), offset);
          const a = birthFromGestation(date, gestation, 'unknown') as Birth;
          expect(birthFromDue(date, a.due, 'unknown')).toEqual(a);
          const ages = agesOn(a, addDays(date, later));
          expect(ages.postmenstrualDays).toBe(gestation + later);
          expect(ages.correctedDays).toBe(ages.postmenstrualDays - 280);
          expect(ages.chronologicalDays - ages.correctedDays).toBe(280 - gestation);
        },
      ),
    );
  });

  test.each([
    [153, 'gestation-range'],
    [315, 'gestation-range'],
  ])('gestation of %i days is refused', (days, code) => {
    expect(birthFromGestation(civil('2026-03-04'), days, 'unknown')).toMatchObject({ code });
  });

  test.each(['2025-12-01', '2026-09-01'])('due date %s for a birth in March is refused', (due) => {
    expect(birthFromDue(civil('2026-03-04'), civil(due), 'unknown')).toMatchObject({
      code: 'due-range',
    });
  });

  test.each([
    ['36w6d', '2026-09-04', 'corrected', 'born-early'],
    ['37w0d', '2026-09-04', 'chronological', 'born-at-term'],
    ['30w0d', '2028-03-04', 'corrected', 'born-early'],
    ['30w0d', '2028-03-05', 'chronological', 'past-limit'],
  ])('born at %s, seen %s: the %s age counts', (gestation, on, counts, why) => {
    const ages = agesOn(born('2026-03-04', gestation), civil(on));
    expect(ages).toMatchObject({ counts, why });
    expect(ages.sdDays).toBe(counts === 'corrected' ? 8 : 0);
    expect(ages.axisDay).toBe(
      280 + (counts === 'corrected' ? ages.correctedDays : ages.chronologicalDays),
    );
  });

  test('the limits are settings', () => {
    const birth = born('2026-03-04', '30w0d');
    const limits = { pretermBelowDays: 28 * 7, untilMonths: 24 };
    expect(agesOn(birth, civil('2026-05-04'), limits).counts).toBe('chronological');
    expect(agesOn(birth, civil('2027-05-04'), { ...DEFAULT_LIMITS, untilMonths: 12 }).counts).toBe(
      'chronological',
    );
  });

  test('the date at a place on the axis is the first on which it is reached', () => {
    let [reached, notBefore] = [0, 0];
    fc.assert(
      fc.property(
        fc.integer({ min: 154, max: 314 }),
        fc.integer({ min: 280, max: 1400 }),
        (gestation, day) => {
          const birth = birthFromGestation(civil('2024-01-31'), gestation, 'unknown') as Birth;
          const on = dateAtAxisDay(birth, toAxisDay(day));
          if (on < birth.born) return;
          reached += 1;
          expect(agesOn(birth, on).axisDay).toBeGreaterThanOrEqual(day);
          const before = addDays(on, -1);
          if (before < birth.born) return;
          notBefore += 1;
          expect(agesOn(birth, before).axisDay).toBeLessThan(day);
        },
      ),
    );
    expect(reached).toBeGreaterThan(0); // of 100
    expect(notBefore).toBeGreaterThan(0);
  });

  test('a birthday on 29 February turns 24 months on 28 February', () => {
    expect(addMonths(civil('2024-02-29'), 24)).toBe('2026-02-28');
  });
});

test('every dating method has a spread, and the looser method the wider one', () => {
  for (const method of DATING_METHODS) expect(DATING_SD_DAYS[method]).toBeGreaterThan(0);
  const scans = [
    'ultrasound-first-trimester',
    'ultrasound-14w0d-21w6d',
    'ultrasound-22w0d-27w6d',
    'ultrasound-third-trimester',
  ] as const;
  const spreads = scans.map((scan) => DATING_SD_DAYS[scan]);
  expect(spreads).toEqual([...spreads].sort((a, b) => a - b));
});

describe('the date of a place on the axis, at the borders of correction', () => {
  test('born at the very limit of "early", the age since birth counts', () => {
    expect(dateAtAxisDay(born('2026-03-04', '37w0d'), toAxisDay(280 + 30))).toBe('2026-04-03');
    expect(dateAtAxisDay(born('2026-03-04', '36w6d'), toAxisDay(280 + 30))).toBe('2026-04-25');
  });

  test('on the last day of correction it still holds, and on the next no more', () => {
    const birth = born('2026-03-04', '30w0d');
    const limit = civil('2028-03-04');
    const days = daysBetween(birth.due, limit);
    expect(dateAtAxisDay(birth, toAxisDay(280 + days))).toBe(limit);
    expect(dateAtAxisDay(birth, toAxisDay(280 + days + 1))).toBe('2028-03-05');
  });
});
