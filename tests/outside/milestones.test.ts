/** Motor milestone windows and counts against what was published. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { fromMonths, toAxisDay, TERM_DAYS } from '../../src/lib/age/axis.ts';
import { countsNear, wilson } from '../../src/lib/judge/counts.ts';

describe('WHO Multicentre Growth Reference Study Group, Acta Paediatr Suppl 2006;450:86-95 (read in the abstract)', () => {
  test.each([
    ['sitting', 3.8, 9.2, 116, 280],
    ['standing-helped', 4.8, 11.4, 146, 347],
    ['crawling', 5.2, 13.5, 158, 411],
    ['walking-helped', 5.9, 13.7, 180, 417],
    ['standing', 6.9, 16.9, 210, 514],
    ['walking', 8.2, 17.6, 250, 536],
  ])('%s: %f to %f months', (id, p1, p99, dayLow, dayHigh) => {
    const m = ATLAS.milestones.get(id)!;
    expect(m.window).toEqual({ p1Months: p1, p99Months: p99 });
    expect(Math.round(fromMonths(p1) - TERM_DAYS)).toBe(dayLow);
    expect(Math.round(fromMonths(p99) - TERM_DAYS)).toBe(dayHigh);
  });

  test('the geometric mean of each window is its published median within 0.1 month (medians from memory)', () => {
    const medians = {
      sitting: 5.9,
      'standing-helped': 7.4,
      crawling: 8.3,
      'walking-helped': 9.0,
      standing: 10.8,
      walking: 12.0,
    };
    for (const [id, median] of Object.entries(medians)) {
      const { p1Months, p99Months } = ATLAS.milestones.get(id)!.window!;
      expect(Math.abs(Math.sqrt(p1Months * p99Months) - median)).toBeLessThanOrEqual(0.1);
    }
  });
});

describe("Wilson's interval: Newcombe RG, Stat Med 1998;17:857-872, Table I, method 3 (read)", () => {
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i', (hits, n, low, high) => {
    const interval = wilson(hits, n);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });
});

test('Shapiro 1981 (read): 42 % of 249 infants still showed the asymmetrical tonic neck response at 6 months', () => {
  const [near] = countsNear(ATLAS.counts.get('atnr')!, fromMonths(6));
  expect(near!.count).toMatchObject({ percent: 42, n: 249, measure: 'present' });
  expect(near!.distanceDays).toBe(0);
  expect(near!.interval!.low).toBeLessThan(0.42);
  expect(near!.interval!.high).toBeGreaterThan(0.42);
  expect(countsNear(ATLAS.counts.get('atnr')!, toAxisDay(20 * 7))).toEqual([]);
});
