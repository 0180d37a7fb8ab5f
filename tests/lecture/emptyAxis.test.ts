/** The empty axis: distances by hand and as properties, for invented lanes and for the atlas. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromGestationWeeks, fromMonths, TERM_DAYS } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { chartData } from '../../src/lib/chart/data.ts';
import { heightAt } from '../../src/lib/chart/ridge.ts';
import { WHOLE } from '../../src/lib/chart/viewport.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import {
  LEAST_DAYS,
  moved,
  scoreOf,
  shuffledBy,
  START,
  stepOf,
  totalOf,
  truthOf,
  type Placed,
  type Truth,
} from '../../src/lib/lecture/emptyAxis.ts';
import { axisPage } from '../../src/lib/words/en/axis.ts';

const BOUNDS = { from: 140, to: 1000 };

/** Form only: begins between 200 and 214, ends between 400 and 435. */
const TRUTH: Truth = {
  id: 'invented',
  band: { begins: 207, ends: 420 },
  beginning: { from: 200, to: 214 },
  ending: { from: 400, to: 435 },
};
const FOR_LIFE: Truth = {
  ...TRUTH,
  band: { begins: 207, ends: Infinity },
  ending: { from: Infinity, to: Infinity },
};

describe('distances worked by hand', () => {
  test.each<[string, Placed, Truth, number, number, number]>([
    ['within what is printed', { begins: 200, ends: 435 }, TRUTH, 0, 0, 0],
    ['two weeks early, one week late', { begins: 186, ends: 442 }, TRUTH, -14, 7, 21],
    ['three weeks late, five weeks early', { begins: 235, ends: 365 }, TRUTH, 21, -35, 56],
    ['to the edge, and it stays', { begins: 207, ends: 1000 }, FOR_LIFE, 0, 0, 0],
    ['let go ten weeks before the edge', { begins: 207, ends: 930 }, FOR_LIFE, 0, -70, 70],
    ['to the edge, and it goes', { begins: 207, ends: 1000 }, TRUTH, 0, 565, 565],
  ])('%s', (_, placed, truth, begins, ends, all) => {
    expect(scoreOf(placed, truth, BOUNDS)).toEqual({
      beginsDays: begins,
      endsDays: ends,
      days: all,
    });
  });

  test('what is printed beyond the axis counts as far as the axis reaches', () => {
    const truth = { ...TRUTH, beginning: { from: 60, to: 100 }, ending: { from: 990, to: 1400 } };
    expect(scoreOf({ begins: 140, ends: 1000 }, truth, BOUNDS).days).toBe(0);
    expect(scoreOf({ begins: 147, ends: 983 }, truth, BOUNDS).days).toBe(14);
  });

  test('the total is their sum, told in weeks and by the band', () => {
    const scores = [
      scoreOf({ begins: 186, ends: 442 }, TRUTH, BOUNDS),
      scoreOf({ begins: 235, ends: 365 }, TRUTH, BOUNDS),
    ];
    expect(totalOf(scores)).toBe(77);
    expect(axisPage.total(77, 2)).toBe('11.0 weeks off in all over 2 bands, 5.5 a band.');
    expect(axisPage.said(-14, 7)).toBe('begins 2 weeks too early, ends 1 week too late');
    expect(axisPage.said(3, 0)).toBe(
      'begins less than a week too late, ends within what the sources print',
    );
  });
});

const TRUTHS = chartData(ATLAS, sheetOf(ATLAS), { sequences: [] }).lanes.flatMap((lane) => {
  const truth = truthOf(lane);
  return truth ? [{ lane, truth }] : [];
});

describe('the bands of the atlas', () => {
  test('most reflexes can be placed', () => {
    expect(TRUTHS.length).toBeGreaterThan(30);
  });

  test.each(TRUTHS.map((one) => [one.truth.id, one] as const))(
    '%s: the band of the sources is no weeks off, and is where the expectation is a half',
    (_, { lane, truth }) => {
      expect(scoreOf(truth.band, truth, WHOLE)).toEqual({ beginsDays: 0, endsDays: 0, days: 0 });
      const { begins, ends } = truth.band;
      expect(heightAt(lane.ridge, begins - 0.5)).toBeLessThan(0.5 + 1e-6);
      expect(heightAt(lane.ridge, begins + 1e-6)).toBeGreaterThanOrEqual(0.5 - 1e-6);
      if (Number.isFinite(ends)) {
        expect(heightAt(lane.ridge, ends - 1e-6)).toBeGreaterThanOrEqual(0.5 - 1e-6);
        expect(heightAt(lane.ridge, ends + 0.5)).toBeLessThan(0.5 + 1e-6);
      }
    },
  );

  // printed ages: Edwards & Al Khalili 2023 (Moro gone by 6 months), Olhweiler et al. 2005 (2.7 in 100 left at
  // 6 months, none at 9), and appearance from 25 weeks on (Robinson 1966; Futagi et al. 2012)
  test('the Moro response: an end at 6 months is printed, one at 10 months is not', () => {
    const { truth } = TRUTHS.find((one) => one.truth.id === 'moro')!;
    const end = (months: number) =>
      scoreOf({ begins: fromGestationWeeks(28), ends: fromMonths(months) }, truth, WHOLE);
    expect(end(6).days).toBe(0);
    expect(end(10).endsDays).toBeGreaterThan(0);
    expect(end(1).endsDays).toBeLessThan(0);
  });
});

const day = fc.integer({ min: BOUNDS.from, max: BOUNDS.to });
const span = fc.tuple(day, day).map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) }));
const truths = fc
  .record({ beginning: span, ending: span, lifelong: fc.boolean() })
  .map(({ beginning, ending, lifelong }): Truth => ({
    id: 'any',
    band: { begins: beginning.from, ends: ending.to },
    beginning,
    ending: lifelong ? { from: ending.from, to: Infinity } : ending,
  }));
const bands = fc
  .tuple(
    fc.integer({ min: BOUNDS.from, max: BOUNDS.to - LEAST_DAYS }),
    fc.integer({ min: LEAST_DAYS, max: BOUNDS.to }),
  )
  .map(([begins, length]): Placed => ({ begins, ends: Math.min(begins + length, BOUNDS.to) }))
  .filter(({ begins, ends }) => ends - begins >= LEAST_DAYS);

describe('what holds for any band', () => {
  test('moving an end further away from the sources never lowers its distance', () => {
    fc.assert(
      fc.property(truths, bands, fc.nat(200), (truth, placed, by) => {
        const before = scoreOf(placed, truth, BOUNDS);
        const away = before.endsDays >= 0 && placed.ends >= truth.ending.from ? by : -by;
        const after = scoreOf(moved(placed, 'ends', away, BOUNDS), truth, BOUNDS);
        if (before.endsDays !== 0)
          expect(Math.abs(after.endsDays)).toBeGreaterThanOrEqual(Math.abs(before.endsDays));
        else expect(after.days).toBeGreaterThanOrEqual(before.days);
      }),
    );
  });

  test('a distance grows by no more than the band is moved', () => {
    fc.assert(
      fc.property(truths, bands, fc.integer({ min: -300, max: 300 }), (truth, placed, by) => {
        const there = moved(placed, 'begins', by, BOUNDS);
        const change =
          scoreOf(there, truth, BOUNDS).beginsDays - scoreOf(placed, truth, BOUNDS).beginsDays;
        expect(Math.abs(change)).toBeLessThanOrEqual(Math.abs(there.begins - placed.begins));
      }),
    );
  });

  test('a band stays on the axis and a week long at least, whatever is done to it', () => {
    const part = fc.constantFrom('whole', 'begins', 'ends' as const);
    const by = fc.oneof(
      fc.integer({ min: -2000, max: 2000 }),
      fc.constantFrom(-Infinity, Infinity),
    );
    fc.assert(
      fc.property(bands, fc.array(fc.tuple(part, by)), (placed, moves) => {
        for (const [what, days] of moves) {
          const before = placed;
          placed = moved(placed, what, days, BOUNDS);
          expect(placed.begins).toBeGreaterThanOrEqual(BOUNDS.from);
          expect(placed.ends).toBeLessThanOrEqual(BOUNDS.to);
          expect(placed.ends - placed.begins).toBeGreaterThanOrEqual(LEAST_DAYS);
          if (what === 'whole')
            expect(placed.ends - placed.begins).toBe(before.ends - before.begins);
        }
      }),
    );
  });
});

test('arrows move by a week, with Shift by four, Home and End to the edges', () => {
  expect(stepOf('ArrowRight', false)).toBe(7);
  expect(stepOf('ArrowLeft', true)).toBe(-28);
  expect(moved(START, 'ends', stepOf('End', false)!, BOUNDS).ends).toBe(BOUNDS.to);
  expect(moved(START, 'whole', stepOf('Home', false)!, BOUNDS).begins).toBe(BOUNDS.from);
  expect(stepOf('Tab', false)).toBeUndefined();
  expect(START.begins).toBe(TERM_DAYS);
});

test('an order holds the same lanes, is the same for its number, and differs by number', () => {
  const ids = TRUTHS.map(({ truth }) => truth.id);
  for (let sheet = 1; sheet <= 20; sheet++) {
    const order = shuffledBy(ids, sheet);
    expect(order).toEqual(shuffledBy(ids, sheet));
    expect(order.toSorted()).toEqual(ids.toSorted());
    expect(order).not.toEqual(ids);
  }
  expect(shuffledBy(ids, 1)).not.toEqual(shuffledBy(ids, 2));
});
