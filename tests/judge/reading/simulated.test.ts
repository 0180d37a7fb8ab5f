/** The rules of reading a child on children drawn by chance; `npm run simulate` prints the whole table. */
import { describe, expect, test } from 'vitest';
import {
  fitCoverage,
  healthyOrders,
  lostShare,
  reversedOrders,
  summed,
  TURNED,
  type OrderShare,
} from '../../simulate/simulate.ts';
import { runs, written } from '../../support/runs.ts';

const SEED = 14;
const HEALTHY = runs(1000, 100);
const REVERSED = runs(500, 200);

test(`of ${written(HEALTHY)} healthy children, at most 2 % of the orders that sources are sure of, and of those that are true, are reversed`, () => {
  const { sure, kept } = healthyOrders(HEALTHY, SEED);
  expect(sure.pairs).toBeGreaterThan(HEALTHY);
  expect(sure.reversed / sure.pairs).toBeLessThanOrEqual(0.02);
  expect(kept.reversed / kept.pairs).toBeLessThanOrEqual(0.02);
});

describe(`of ${written(REVERSED)} children truly reversed the visits speak against the order`, () => {
  const found = TURNED.map((turned) => {
    const [one, two] = ([1, 2] as const).map((between) =>
      reversedOrders(REVERSED / 2, SEED + between, turned, between),
    );
    return { turned, one: one!, two: two! };
  });
  const share = ({ reversed, against, pairs }: OrderShare): number => (reversed + against) / pairs;
  const arms = found.filter(({ turned }) => turned.sequence === 'arms-then-legs');
  const others = found.filter(({ turned }) => turned.sequence !== 'arms-then-legs');

  test('in 80 of 100 where absence tells, with three or four visits around the change', () => {
    expect(share(summed(others.flatMap(({ one, two }) => [one, two])))).toBeGreaterThanOrEqual(0.8);
  });

  test('in 60 of 100 of arms then legs, whose absence tells little: every second answer is missed', () => {
    expect(share(summed(arms.flatMap(({ one, two }) => [one, two])))).toBeGreaterThanOrEqual(0.6);
  });

  test.each(others.map(({ turned, two }) => [turned.reflexes.join(' and '), two] as const))(
    '%s: in 85 of 100 with two visits between the one and the other',
    (_, two) => {
      expect(share(two)).toBeGreaterThanOrEqual(0.85);
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

test('a single miss is not a loss: as often as by arithmetic in children who have all five reactions', () => {
  const children = runs(1000, 200);
  const { notNow, lost } = lostShare(children, SEED, [15, 17, 19, 21]);
  // of one reaction, each answer missed with 0.1: seen (+) and missed (-) at four visits
  const [seen, missed] = [0.9, 0.1];
  // never missed once it was seen: ++++, -+++, --++, ---+, ----
  const never = seen ** 4 + missed * seen ** 3 + missed ** 2 * seen ** 2 + missed ** 3 * seen;
  const allOfFive = (share: number): number => share ** 5;
  const byChance = 1 - allOfFive(never + missed ** 4);
  expect(byChance).toBeCloseTo(0.78, 2);
  // missed twice running once it was seen: +--?, ++--, -+--
  const twice = seen * missed ** 2 + seen ** 2 * missed ** 2 + missed * seen * missed ** 2;
  // or three and more of five at the second, third or fourth visit, each seen before
  const threeOf = (p: number): number => 10 * p ** 3 * (1 - p) ** 2 + 5 * p ** 4 * (1 - p) + p ** 5;
  const together = [1, 2, 3].map((before) => threeOf((1 - missed ** before) * missed));
  const lostByChance = 1 - together.reduce((left, p) => left * (1 - p), allOfFive(1 - twice));
  expect(lostByChance).toBeCloseTo(0.106, 2);
  const within = (share: number) => 3 * Math.sqrt((share * (1 - share)) / children);
  expect(Math.abs(notNow / children - byChance)).toBeLessThan(within(byChance));
  expect(Math.abs(lost / children - lostByChance)).toBeLessThan(within(lostByChance));
});
