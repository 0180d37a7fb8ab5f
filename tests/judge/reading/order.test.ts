/** Properties of orders, whatever the sources and the days. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type CivilDate } from '../../../src/lib/age/civil.ts';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../../src/lib/judge/judge.ts';
import { ChildReading, Priors } from '../../../src/lib/judge/reading/child.ts';
import { Inferred, seen, type DayLikelihood } from '../../../src/lib/judge/reading/course.ts';
import { gaussOn } from '../../../src/lib/judge/reading/gauss.ts';
import { milestonePrior } from '../../../src/lib/judge/reading/milestone.ts';
import { oddsRatio, ordersOf, type Happening } from '../../../src/lib/judge/reading/order.ts';
import { Prior, type EventPrior } from '../../../src/lib/judge/reading/prior.ts';
import { anyCase } from '../../support/anyCase.ts';
import { runs } from '../../support/runs.ts';

const sheet = sheetOf(ATLAS, 'default');
const PRIORS = new Priors(ATLAS, sheet);

const anyDays: fc.Arbitrary<DayLikelihood[]> = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 150, max: 1000 }), fc.boolean()), {
    selector: ([day]) => day,
    maxLength: 4,
  })
  .map((days) => days.sort(([a], [b]) => a - b).map(([day, there]) => seen(day, there, 0.1)));

const anyCourse = (sd: number) =>
  fc
    .tuple(fc.constantFrom(...ATLAS.reflexes.keys()), anyDays)
    .map(([reflex, days]) => new Inferred(PRIORS.reflex(reflex)!, days, sd));
const milestones = [...ATLAS.milestones.values()].filter(({ window }) => window);
const anyHappening = (sd: number): fc.Arbitrary<Happening> =>
  fc.oneof(
    fc.record({
      event: fc.constantFrom('appears' as const, 'integrates' as const),
      courses: fc.array(anyCourse(sd), { minLength: 1, maxLength: 3 }),
      polynomial: fc.constant(true),
    }),
    fc.tuple(fc.constantFrom(...milestones), anyDays).map(([milestone, days]) => ({
      event: 'appears' as const,
      courses: [new Inferred(milestonePrior(milestone)!, days, sd)],
      polynomial: false,
    })),
  );
const anyPair = fc
  .constantFrom(0, 8)
  .chain((sd) => fc.tuple(anyHappening(sd), anyHappening(sd)))
  .filter(([first, second]) => first.polynomial || second.polynomial);

describe('properties', () => {
  test('first, second, and tie or neither sum to one; the other way round they change places', () => {
    fc.assert(
      fc.property(anyPair, ([first, second]) => {
        const orders = ordersOf(first, second)!;
        const turned = ordersOf(second, first)!;
        expect(orders.firstBefore + orders.secondBefore + orders.neither).toBeCloseTo(1, 7);
        expect(turned.firstBefore).toBeCloseTo(orders.secondBefore, 9);
        expect(turned.neither).toBeCloseTo(orders.neither, 9);
        for (const p of [orders.firstBefore, orders.secondBefore, orders.neither])
          expect(p).toBeGreaterThanOrEqual(-1e-12);
      }),
      { numRuns: runs(500) },
    );
  });

  test('what the visits say is finite, above nought, and one where they say nothing', () => {
    fc.assert(
      fc.property(anyPair, ([first, second]) => {
        const bare = ({ courses, ...rest }: Happening): Happening => ({
          ...rest,
          courses: courses.map(({ prior }) => new Inferred(prior, [], 0)),
        });
        const alone = ordersOf(bare(first), bare(second))!;
        const ratio = oddsRatio(alone, ordersOf(first, second)!);
        expect(Number.isFinite(ratio)).toBe(true);
        expect(ratio).toBeGreaterThan(0);
        expect(oddsRatio(alone, alone)).toBe(1);
      }),
      { numRuns: runs(500) },
    );
  });
});

test('the first of several appears no later than any, the last of several integrates no earlier', () => {
  const uniform = (from: number, to: number): EventPrior => ({
    pieces: [{ from, to, weight: 1 }],
    dated: true,
  });
  const course = (a: [number, number], i: [number, number]) =>
    new Inferred(new Prior(uniform(...a), uniform(...i)), [], 0);
  const one: Happening = {
    event: 'appears',
    courses: [course([300, 400], [500, 600]), course([300, 400], [500, 600])],
    polynomial: true,
  };
  const other: Happening = { ...one, courses: [course([300, 400], [500, 600])] };
  // the first of two against a third, all alike: 2 in 3; so is the last of two after the third
  expect(ordersOf(one, other)!.firstBefore).toBeCloseTo(2 / 3, 12);
  const last: Happening = { ...one, event: 'integrates' };
  expect(ordersOf(last, { ...other, event: 'integrates' })!.secondBefore).toBeCloseTo(2 / 3, 12);
});

test('neither in both reverses nothing: the odds are of first against second alone', () => {
  const alone = { firstBefore: 0.9, secondBefore: 0.09, neither: 0.01 };
  expect(oddsRatio(alone, { firstBefore: 0.09, secondBefore: 0.009, neither: 0.901 })).toBeCloseTo(
    1,
    12,
  );
  expect(oddsRatio(alone, { firstBefore: 0, secondBefore: 1, neither: 0 })).toBeGreaterThan(0);
});

test('nodes of Gauss and Legendre: those of 2 and 3 points (published: standard tables), and any power', () => {
  expect(gaussOn(2).map(({ at }) => at)[0]).toBeCloseTo((1 + 1 / Math.sqrt(3)) / 2, 14);
  expect(gaussOn(3).map(({ weight }) => weight * 2)).toEqual([
    expect.closeTo(5 / 9, 13),
    expect.closeTo(8 / 9, 13),
    expect.closeTo(5 / 9, 13),
  ]);
  for (let n = 1; n <= 12; n++)
    for (let power = 0; power < 2 * n; power++) {
      const sum = gaussOn(n).reduce((total, { at, weight }) => total + weight * at ** power, 0);
      expect(sum).toBeCloseTo(1 / (power + 1), 12);
    }
});

test('dates of birth and visits shifted alike leave every answer on the axis as it was', () => {
  fc.assert(
    fc.property(
      anyCase({ maxVisits: 4 }),
      fc.integer({ min: -3000, max: 3000 }),
      (record, days) => {
        const move = (on: CivilDate): CivilDate => addDays(on, days);
        const { birth } = record.child;
        const moved = {
          ...record,
          child: {
            ...record.child,
            birth: { ...birth, born: move(birth.born), due: move(birth.due) },
          },
          visits: record.visits.map((visit) => ({ ...visit, on: move(visit.on) })),
        };
        const [one, other] = [new ChildReading(record, PRIORS), new ChildReading(moved, PRIORS)];
        expect(other.orders()).toEqual(one.orders());
        for (const reflex of one.days.keys()) {
          const [a, b] = [one.course(reflex)!, other.course(reflex)!];
          expect(b.dates('appears')).toEqual(a.dates('appears'));
          expect(b.states(500)).toEqual(a.states(500));
          expect(b.change(600)).toEqual(a.change(600));
        }
      },
    ),
    { numRuns: runs(200, 20) },
  );
});
