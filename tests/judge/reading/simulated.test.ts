/** The rules of reading a child on children drawn by chance; `npm run simulate` prints the whole table. */
import { describe, expect, test } from 'vitest';
import {
  fitCoverage,
  healthyOrders,
  lostShare,
  reversedOrders,
  TURNED,
} from '../../simulate/simulate.ts';
import { runs, written } from '../../support/runs.ts';

const SEED = 14;
const HEALTHY = runs(1000, 100);
const REVERSED = runs(500, 60);

test(`of ${written(HEALTHY)} healthy children, at most 2 % of the orders that sources are sure of, and of those that are true, are reversed`, () => {
  const { sure, kept } = healthyOrders(HEALTHY, SEED);
  expect(sure.pairs).toBeGreaterThan(HEALTHY);
  expect(sure.reversed / sure.pairs).toBeLessThanOrEqual(0.02);
  expect(kept.reversed / kept.pairs).toBeLessThanOrEqual(0.02);
});

describe(`of ${written(REVERSED)} children truly reversed the visits speak against the order`, () => {
  test.each(TURNED.map((turned) => [turned.reflexes.join(' and '), turned] as const))(
    '%s',
    (_, turned) => {
      const share = reversedOrders(REVERSED, SEED, turned);
      const least = turned.sequence === 'arms-then-legs' ? 0.6 : 0.8;
      expect((share.reversed + share.against) / share.pairs).toBeGreaterThanOrEqual(least);
    },
  );
});

test('where a best-fitting age is shown, its interval holds the age of 85 in 100', () => {
  const found = [1, 3, 5, 7, 9, 12].flatMap((months) => fitCoverage(runs(300, 40), SEED, months));
  for (const kind of ['primitive', 'postural', 'milestones'] as const) {
    const of = found.filter((one) => one.kind === kind);
    const shown = of.reduce((sum, one) => sum + one.shown, 0);
    const covered = of.reduce((sum, one) => sum + one.covered, 0);
    expect(shown).toBeGreaterThan(0);
    expect(covered / shown).toBeGreaterThanOrEqual(0.85);
  }
});

test('a single miss is not a loss: over four visits one in ten healthy children at most has lost a reaction', () => {
  const children = runs(1000, 100);
  const { notNow, lost } = lostShare(children, SEED);
  expect(notNow).toBeGreaterThan(lost * 3);
  expect(lost / children).toBeLessThanOrEqual(0.1);
});
