import { describe, expect, test } from 'vitest';
import { fromMonths, toMonths, type AxisDay } from '../../../src/lib/age/axis.ts';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../../src/lib/judge/judge.ts';
import { Priors } from '../../../src/lib/judge/reading/child.ts';
import {
  DAYS,
  fitFrom,
  fitsOf,
  type Fit,
  type FitKind,
} from '../../../src/lib/judge/reading/fit.ts';
import { milestoneAsks } from '../../../src/lib/judge/reading/milestone.ts';
import { eventsOf } from '../../../src/lib/judge/reading/prior.ts';
import { gridOf, pairsOf } from '../../support/bruteCourse.ts';
import { childCase, type ShortFinding } from '../../support/kestrel.ts';

const SHEET = sheetOf(ATLAS, 'default');
const PRIORS = new Priors(ATLAS, SHEET);
const TERM = { born: '2026-01-01', gestation: '40w0d' };

const sideOf = (reflex: string) => (ATLAS.reflexes.get(reflex)!.testedPerSide ? 'left' : 'midline');

/** Reflexes with both events dated that come and go, or come and stay. */
function reflexesOf(kind: 'primitive' | 'postural'): string[] {
  return [...ATLAS.reflexes.keys()].filter((id) => {
    const prior = PRIORS.reflex(id, 0)!;
    if (!prior.datedA || !prior.datedI) return false;
    return prior.neverI / prior.possible >= 0.5 === (kind === 'postural');
  });
}

/** An infant who answers at every reflex as is likelier at an age, in months. */
function ordinaryAt(kind: 'primitive' | 'postural', months: number): ShortFinding[] {
  return reflexesOf(kind).map((reflex): ShortFinding => {
    const row = { a: 0, i: 0, m: 0, fa: 0, fi: 0 };
    const prior = PRIORS.reflex(reflex, 0)!;
    prior.at(fromMonths(months), row);
    const there = (row.a - row.m - (row.a * row.i - row.m)) / prior.possible;
    return [reflex, sideOf(reflex), there >= 0.5 ? 'elicited' : 'not-elicited'];
  });
}

function fit(
  kind: FitKind,
  findings: ShortFinding[],
  milestones: Record<string, boolean> = {},
  sdDays = 0,
): Fit {
  const [visit] = childCase(TERM, [{ on: '2026-07-01', findings, milestones }]).visits;
  return fitsOf(visit!, PRIORS, sdDays).find((one) => one.kind === kind)!;
}
const months = (day: number | null) => toMonths(day as AxisDay);

describe('an infant who answers as is ordinary at an age', () => {
  test.each([3, 4, 5, 6, 7])('%i months, postural: the interval holds the age', (age) => {
    const found = fit('postural', ordinaryAt('postural', age));
    expect(found.takingPart).toBeGreaterThanOrEqual(8);
    if (found.low !== null) expect(months(found.low)).toBeLessThan(age + 0.5);
    if (found.high !== null) expect(months(found.high)).toBeGreaterThan(age - 0.5);
  });

  test('what comes and stays does not say how much older than a year a child is: cut off, off the line', () => {
    const found = fit('postural', ordinaryAt('postural', 20));
    expect(found.high).toBeNull();
    expect(found.low).not.toBeNull();
    expect(found.onLine).toBe(false);
  });

  test('what comes and goes, all there, is cut off at term', () => {
    const found = fit('primitive', ordinaryAt('primitive', 0.5));
    expect(found.low).toBeNull();
    expect(found.high).not.toBeNull();
  });
});

test('the middle of what is likely at each age, each reflex counted through a grid', () => {
  const findings = ordinaryAt('postural', 5).slice(0, 8);
  const STEP = 5;
  const middles = Array.from({ length: (1010 - 280) / STEP }, (_, k) => 280 + (k + 0.5) * STEP);
  const likelihood = middles.map(() => 1);
  for (const [reflex, , response] of findings) {
    const { appears, integrates } = eventsOf(SHEET.get(reflex)!.windows);
    const grid = [gridOf(appears, STEP), gridOf(integrates, STEP)] as const;
    const there = middles.map(() => 0);
    const total = pairsOf(...grid, [], (a, i, weight) => {
      middles.forEach((day, k) => {
        if (a <= day && day < i) there[k]! += weight;
      });
    });
    const { missed } = ATLAS.reflexes.get(reflex)!.absence;
    middles.forEach((_, k) => {
      const elicited = 0.02 + (1 - missed - 0.02) * (there[k]! / total);
      likelihood[k]! *= response === 'elicited' ? elicited : 1 - elicited;
    });
  }
  const sum = likelihood.reduce((total, one) => total + one, 0);
  let below = 0;
  const k = likelihood.findIndex((one) => (below += one) >= sum / 2);
  const median = middles[k]! + STEP / 2 - ((below - sum / 2) / likelihood[k]!) * STEP;
  expect(Math.abs(fit('postural', findings).median - median)).toBeLessThan(STEP / 2);
});

test('the child’s own age plays no part', () => {
  const findings = ordinaryAt('postural', 5);
  const on = (date: string) =>
    fitsOf(childCase(TERM, [{ on: date, findings }]).visits[0]!, PRIORS, 0);
  expect(on('2026-03-01')).toEqual(on('2027-03-01'));
});

test('doubt in the dating widens the interval', () => {
  const findings = ordinaryAt('postural', 5);
  const width = (sd: number) => {
    const { low, high } = fit('postural', findings, {}, sd);
    return high! - low!;
  };
  expect(width(15.3)).toBeGreaterThan(width(0));
});

test('fewer than 8 reflexes are not shown, and none has no age', () => {
  const findings = ordinaryAt('postural', 5).slice(0, 7);
  expect(fit('postural', findings)).toMatchObject({
    hidden: 'too-few',
    takingPart: 7,
    onLine: false,
  });
  expect(fit('postural', [])).toMatchObject({ takingPart: 0, median: NaN, hidden: 'too-few' });
});

describe('the shape of a likelihood', () => {
  /** Hills of a height around some days after term, each 20 days wide at half of it. */
  const hills = (...of: [day: number, height: number][]): Float64Array => {
    const sum = Float64Array.from({ length: DAYS }, (_, day) =>
      of.reduce((total, [at, height]) => total + height * 2 ** -(((day - at) / 10) ** 2), 0),
    );
    const greatest = Math.max(...sum);
    return sum.map((one) => one / greatest);
  };
  const shape = (likelihood: Float64Array) => fitFrom('postural', likelihood, 8, 8);

  test('one hill: its middle, and nine tenths of its normal shape', () => {
    const found = shape(hills([200, 1]));
    // 2^-(x/10)^2 is normal with sd 10 / sqrt(2 ln 2)
    const sd = 10 / Math.sqrt(2 * Math.LN2);
    expect(found.median).toBeCloseTo(280 + 200.5, 1);
    expect(found.high! - found.low!).toBeCloseTo(2 * 1.644854 * sd, 1);
    expect(found).toMatchObject({ hidden: null, onLine: true });
  });

  test('a second hill of a tenth of the height is a second mode; one of less, or a shoulder, is not', () => {
    expect(shape(hills([200, 1], [300, 0.15])).hidden).toBe('several-modes');
    expect(shape(hills([100, 0.15], [200, 1])).hidden).toBe('several-modes');
    expect(shape(hills([200, 1], [300, 0.05])).hidden).toBeNull();
    expect(shape(hills([200, 1], [215, 0.6])).hidden).toBeNull();
  });

  test('as wide as six months it is not shown', () => {
    const plateau = (wide: number) =>
      Float64Array.from({ length: DAYS }, (_, day) => (day >= 100 && day < 100 + wide ? 1 : 0));
    // nine tenths of 202 days are just under 6 months of 30.4375 days
    expect(shape(plateau(202)).hidden).toBeNull();
    expect(shape(plateau(204)).hidden).toBe('too-wide');
  });

  test('what fits any age says nothing', () => {
    expect(shape(new Float64Array(DAYS).fill(1))).toMatchObject({
      low: null,
      high: null,
      hidden: 'too-wide',
    });
  });

  test('cut off at the older end, the younger end does not depend on the length of the axis', () => {
    const rising = Float64Array.from({ length: DAYS }, (_, day) => Math.min(1, day / 400));
    // the first whole day with exp(-2.7055 / 2) = 0.2585 of the greatest
    expect(shape(rising)).toMatchObject({
      low: 280 + 104,
      high: null,
      hidden: null,
      onLine: false,
    });
  });
});

describe('milestones', () => {
  test('sitting and standing with help, not crawling or walking: between them', () => {
    const found = fit('milestones', [], {
      sitting: true,
      'standing-helped': true,
      crawling: false,
      'walking-helped': false,
      standing: false,
      walking: false,
    });
    // WHO 2006, medians from memory: standing with help 7.4, crawling 8.3 months
    expect(months(found.median)).toBeGreaterThan(6.5);
    expect(months(found.median)).toBeLessThan(9);
    expect(found).toMatchObject({ hidden: null, onLine: true });
  });

  test('all reached are cut off at the older end', () => {
    const all = Object.fromEntries([...ATLAS.milestones.keys()].map((id) => [id, true]));
    const found = fit('milestones', [], all);
    expect(found).toMatchObject({ high: null, onLine: false, takingPart: 6 });
    expect(months(found.low)).toBeGreaterThan(8);
  });

  // WHO 2006 (read in the abstract): 99th percentile of sitting 9.2 months; the 90th from the log-normal
  test.each([
    [7.4, undefined],
    [7.7, 'watch'],
    [9.1, 'watch'],
    [9.3, 'discuss'],
  ])('not sitting at %f months: %s', (age, asks) => {
    expect(milestoneAsks(ATLAS.milestones.get('sitting')!.window!, fromMonths(age))).toBe(asks);
  });
});
