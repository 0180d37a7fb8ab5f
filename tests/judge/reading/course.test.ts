import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../../src/lib/judge/judge.ts';
import { Inferred, seen, type DayLikelihood } from '../../../src/lib/judge/reading/course.ts';
import { Prior, priorOf, type EventPrior } from '../../../src/lib/judge/reading/prior.ts';
import { bruteBy, gridOf, pairsOf } from '../../support/bruteCourse.ts';
import { runs } from '../../support/runs.ts';

const uniform = (from: number, to: number): EventPrior => ({
  pieces: [{ from, to, weight: 1 }],
  dated: true,
});

/** A mixture of spans on the axis and never, on whole days. */
const anyEvent: fc.Arbitrary<EventPrior> = fc
  .record({
    spans: fc.array(
      fc.record({
        from: fc.integer({ min: 140, max: 900 }),
        wide: fc.integer({ min: 1, max: 110 }),
        weight: fc.integer({ min: 1, max: 9 }),
      }),
      { maxLength: 4 },
    ),
    never: fc.integer({ min: 1, max: 4 }),
    jump: fc.integer({ min: 0, max: 3 }),
  })
  .map(({ spans, never, jump }) => {
    const total = spans.reduce((sum, { weight }) => sum + weight, never + jump);
    return {
      dated: true,
      pieces: [
        { from: 140, to: 140, weight: jump / total },
        ...spans.map(({ from, wide, weight }) => ({
          from,
          to: from + wide,
          weight: weight / total,
        })),
        { from: Infinity, to: Infinity, weight: never / total },
      ],
    };
  });
const anyPrior = fc
  .tuple(anyEvent, anyEvent)
  .map(([appears, integrates]) => ({ appears, integrates, prior: new Prior(appears, integrates) }))
  .filter(({ prior }) => prior.possible > 1e-3);

const anyDays = (missed = 0.1, imagined = 0.02): fc.Arbitrary<DayLikelihood[]> =>
  fc
    .uniqueArray(fc.tuple(fc.integer({ min: 100, max: 1100 }), fc.boolean()), {
      selector: ([day]) => day,
      maxLength: 6,
    })
    .map((days) =>
      days.sort(([a], [b]) => a - b).map(([day, there]) => seen(day, there, missed, imagined)),
    );
const anyDay = fc.integer({ min: 100, max: 1100 });

describe('a course by hand', () => {
  // A uniform over 10 days, I uniform over the next 10: seen at the middle of the second span
  const prior = new Prior(uniform(300, 310), uniform(310, 320));

  test('without visits the sources alone', () => {
    const course = new Inferred(prior, [], 0);
    expect(course.by('appears', 305)).toBeCloseTo(0.5, 12);
    expect(course.states(315)).toEqual({ notYet: 0, there: 0.5, gone: 0.5 });
    expect(course.dates('integrates').median).toBeCloseTo(315, 3);
  });

  test('seen half way through the integrates window, without error: gone in the other half', () => {
    const course = new Inferred(prior, [seen(315, true, 0, 0)], 0);
    expect(course.by('integrates', 315)).toBe(0);
    expect(course.by('integrates', 317.5)).toBeCloseTo(0.5, 12);
    expect(course.dates('integrates').low).toBeCloseTo(315.25, 3);
  });

  test('with errors: there 0.9 of 0.9 + 0.02 (equal before)', () => {
    const course = new Inferred(prior, [seen(315, true, 0.1)], 0);
    expect(course.states(315).there).toBeCloseTo(0.9 / 0.92, 12);
  });

  test('not seen on two days while it should be there: never weighs more', () => {
    const withNever = new Prior(
      {
        dated: true,
        pieces: [
          { from: 300, to: 310, weight: 0.95 },
          { from: Infinity, to: Infinity, weight: 0.05 },
        ],
      },
      { dated: true, pieces: [{ from: Infinity, to: Infinity, weight: 1 }] },
    );
    const course = new Inferred(withNever, [seen(400, false, 0.1), seen(430, false, 0.1)], 0);
    const never = 0.05 * 0.98 ** 2;
    expect(course.never('appears')).toBeCloseTo(never / (never + 0.95 * 0.1 ** 2), 12);
  });

  test('what two sure answers rule out is contradicted, not a number', () => {
    const course = new Inferred(prior, [seen(300, true, 0, 0)], 0);
    expect(course.contradicted).toBe(true);
    expect(course.by('appears', 305)).toBeNaN();
    expect(course.change(305)).toBeUndefined();
  });

  test('hundreds of days do not underflow', () => {
    const days = Array.from({ length: 400 }, (_, k) => seen(305 + k / 50, k % 2 === 0, 0.1));
    const course = new Inferred(prior, days, 0);
    const { notYet, there, gone } = course.states(309);
    expect(notYet + there + gone).toBeCloseTo(1, 9);
  });
});

describe('properties', () => {
  test('probabilities sum to one, and none is below nought', () => {
    fc.assert(
      fc.property(
        anyPrior,
        anyDays(),
        anyDay,
        fc.constantFrom(0, 5.1, 15.3),
        ({ prior }, days, day, sd) => {
          const course = new Inferred(prior, days, sd);
          const { notYet, there, gone } = course.states(day);
          expect(notYet + there + gone).toBeCloseTo(1, 9);
          for (const p of [notYet, there, gone]) expect(p).toBeGreaterThanOrEqual(-1e-12);
          for (const event of ['appears', 'integrates'] as const)
            expect(course.by(event, 2000) + course.never(event)).toBeCloseTo(1, 12);
        },
      ),
      { numRuns: runs(2000) },
    );
  });

  test('an event by a day is never likelier than by a later one', () => {
    fc.assert(
      fc.property(anyPrior, anyDays(), anyDay, anyDay, ({ prior }, days, one, other) => {
        const course = new Inferred(prior, days, 5.1);
        const [early, late] = [Math.min(one, other), Math.max(one, other)];
        for (const event of ['appears', 'integrates'] as const)
          expect(course.by(event, early)).toBeLessThanOrEqual(course.by(event, late) + 1e-12);
      }),
      { numRuns: runs(2000) },
    );
  });

  test('the density is the slope of what has happened by a day', () => {
    fc.assert(
      fc.property(
        anyPrior,
        anyDays(),
        fc.integer({ min: 141, max: 1008 }),
        ({ prior }, days, at) => {
          const posterior = new Inferred(prior, days, 0).posteriors[0]!;
          for (const event of ['appears', 'integrates'] as const) {
            // every edge is on a whole day, so that between two of them the function is quadratic
            const [from, middle, to] = [at + 0.2, at + 0.5, at + 0.8];
            const slope = (posterior.by(event, to) - posterior.by(event, from)) / 0.6;
            expect(posterior.density(event, middle)).toBeCloseTo(slope, 8);
          }
        },
      ),
      { numRuns: runs(2000) },
    );
  });

  test('without error rates another finding never widens when an event can have been', () => {
    fc.assert(
      fc.property(
        anyPrior,
        anyDays(0, 0),
        anyDay,
        fc.boolean(),
        anyDay,
        ({ prior }, days, day, there, at) => {
          fc.pre(!days.some((one) => one.day === day));
          const more = [...days, seen(day, there, 0, 0)].sort((a, b) => a.day - b.day);
          const [before, after] = [new Inferred(prior, days, 0), new Inferred(prior, more, 0)];
          fc.pre(!after.contradicted);
          expect(before.contradicted).toBe(false);
          for (const event of ['appears', 'integrates'] as const) {
            const span = (course: Inferred) => course.by(event, at + 3) - course.by(event, at);
            if (span(before) <= 1e-12) expect(span(after)).toBeLessThanOrEqual(1e-9);
          }
        },
      ),
      { numRuns: runs(3000) },
    );
  });

  test('a finding never lowers the probability of what it shows', () => {
    fc.assert(
      fc.property(
        anyPrior,
        anyDays(),
        anyDay,
        fc.boolean(),
        fc.constantFrom(0, 8),
        ({ prior }, days, day, there, sd) => {
          const more = [...days, seen(day, there, 0.1)].sort((a, b) => a.day - b.day);
          const shown = (course: Inferred): number => {
            const p = course.states(day).there;
            return there ? p : 1 - p;
          };
          const [before, after] = [new Inferred(prior, days, sd), new Inferred(prior, more, sd)];
          expect(shown(after)).toBeGreaterThanOrEqual(shown(before) - 1e-9);
        },
      ),
      { numRuns: runs(2000) },
    );
  });
});

describe('against counting through a daily grid', () => {
  test('any mixture, any days', () => {
    fc.assert(
      fc.property(anyPrior, anyDays(), anyDay, ({ appears, integrates, prior }, days, day) => {
        const brute = bruteBy(gridOf(appears), gridOf(integrates), days, day);
        const course = new Inferred(prior, days, 0);
        expect(course.by('appears', day)).toBeCloseTo(brute.appears, 6);
        expect(course.by('integrates', day)).toBeCloseTo(brute.integrates, 6);
      }),
      { numRuns: runs(300, 15) },
    );
  });
});

test('in doubt of the dating: the grid at each shift of all days, weighted by how likely it and they are', () => {
  const appears: EventPrior = uniform(300, 400);
  const integrates: EventPrior = uniform(380, 600);
  const days = [seen(390, true, 0.1), seen(450, true, 0.1), seen(500, false, 0.1)];
  const sd = 8;
  let [sum, total] = [0, 0];
  for (let k = 0; k < 15; k++) {
    const z = -3.5 + k / 2;
    const moved = days.map((one) => ({ ...one, day: one.day + z * sd }));
    const grid = [gridOf(appears), gridOf(integrates)] as const;
    const weight = Math.exp(-(z ** 2) / 2) * pairsOf(...grid, moved, () => undefined);
    sum += weight * bruteBy(...grid, moved, 480 + z * sd).integrates;
    total += weight;
  }
  const course = new Inferred(new Prior(appears, integrates), days, sd);
  expect(course.by('integrates', 480)).toBeCloseTo(sum / total, 6);
});

describe('priors of the atlas', () => {
  const sheet = sheetOf(ATLAS, 'default');

  test.each([...sheet].map(([id, compiled]) => [id, compiled.windows] as const))(
    '%s: some course is possible, and a tenth of each event is broad',
    (_, windows) => {
      const prior = priorOf(windows);
      expect(prior.possible).toBeGreaterThan(0.5);
      expect(prior.neverA).toBeGreaterThanOrEqual(0.05 - 1e-12);
      expect(prior.neverI).toBeGreaterThanOrEqual(0.05 - 1e-12);
    },
  );

  test('a row that a voice says once more changes nothing', () => {
    const { windows } = sheetOf(ATLAS, 'all').get('moro')!;
    const rows = (family: string) => windows.filter((w) => w.claim.family === family);
    const single = windows.find(
      (w) => w.integrates?.to != null && rows(w.claim.family).length === 1,
    )!;
    const [once, twice] = [priorOf(windows), priorOf([...windows, { ...single }])];
    const apart = priorOf([
      ...windows,
      { ...single, claim: { ...single.claim, family: 'another voice' } },
    ]);
    const by = (prior: Prior, day: number) => new Inferred(prior, [], 0).by('integrates', day);
    const middle = (single.integrates!.from + single.integrates!.to!) / 2;
    expect(by(twice, middle)).toBeCloseTo(by(once, middle), 12);
    expect(by(apart, middle)).not.toBeCloseTo(by(once, middle), 4);
  });

  test('an event that no chosen source dates has the broad prior alone and is said to be undated', () => {
    const windows = sheet.get('stnr')!.windows;
    const undated = priorOf(windows.map((w) => ({ ...w, integrates: null, lifelong: false })));
    expect(undated.datedI).toBe(false);
    expect(undated.datedA).toBe(true);
    expect(undated.neverI).toBeCloseTo(0.5, 12);
  });
});
