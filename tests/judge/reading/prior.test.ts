/** What the chosen sources say of two events, sentence by sentence of how it is modelled. */
import { describe, expect, test } from 'vitest';
import { fromMonths } from '../../../src/lib/age/axis.ts';
import { ATLAS, type SourcedClaim } from '../../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../../src/lib/judge/judge.ts';
import { ChildReading, Priors } from '../../../src/lib/judge/reading/child.ts';
import { Inferred, seen } from '../../../src/lib/judge/reading/course.ts';
import { milestonePrior } from '../../../src/lib/judge/reading/milestone.ts';
import { eventsOf, Prior, type EventPrior } from '../../../src/lib/judge/reading/prior.ts';
import { windowsOf } from '../../../src/lib/judge/window.ts';
import { childCase } from '../../support/kestrel.ts';

/** A source of a family of its own that dates nothing but what is given. */
const says = (family: string, given: Partial<SourcedClaim>): SourcedClaim => ({
  reflex: 'invented',
  role: 'window',
  basis: 'memory',
  population: 'term infants',
  appearsStatus: 'not-stated',
  integratesStatus: 'not-stated',
  source: {
    id: family,
    short: family,
    year: 2000,
    tier: 'course-notes',
    basis: 'memory',
    claims: [],
    counts: [],
  },
  family,
  judgedByDefault: true,
  ...given,
});
const months = (low: number, high: number) => ({
  asPrinted: `${low} to ${high} months`,
  unit: 'mo' as const,
  low,
  high,
});
const appears = (low: number, high: number): Partial<SourcedClaim> => ({
  appearsStatus: 'given',
  appears: months(low, high),
});
const integrates = (low: number, high: number): Partial<SourcedClaim> => ({
  integratesStatus: 'given',
  integrates: months(low, high),
});
const events = (...claims: SourcedClaim[]) => eventsOf(windowsOf(claims), 0);
const span = (low: number, high: number, weight: number) => ({
  from: fromMonths(low),
  to: fromMonths(high),
  weight,
});
const NEVER = (weight: number) => ({ from: Infinity, to: Infinity, weight });

describe('what a source says of an event', () => {
  test('a window is uniform, each voice of the same weight', () => {
    const found = events(
      says('one', { ...appears(1, 3), ...integrates(4, 6) }),
      says('two', { ...appears(2, 4), ...integrates(5, 8) }),
    );
    expect(found.appears.pieces).toEqual([span(1, 3, 0.5), span(2, 4, 0.5)]);
    expect(found.integrates.pieces).toEqual([span(4, 6, 0.5), span(5, 8, 0.5)]);
  });

  test('"by term" is uniform from day 140 to 280', () => {
    const found = events(says('one', { appearsStatus: 'implied', ...integrates(4, 6) }));
    expect(found.appears.pieces).toEqual([{ from: 140, to: 280, weight: 1 }]);
  });

  test('"stays for life" is never', () => {
    const found = events(
      says('one', { ...appears(1, 3), integratesStatus: 'persists' }),
      says('two', { ...appears(1, 3), ...integrates(4, 6) }),
    );
    expect(found.integrates.pieces).toEqual([NEVER(0.5), span(4, 6, 0.5)]);
  });

  test('one that does not date it, or says "later than", has no say', () => {
    const later = { asPrinted: 'after 12 months', unit: 'mo' as const, low: 12, high: null };
    const found = events(
      says('one', integrates(4, 6)),
      says('two', appears(1, 3)),
      says('three', { ...appears(1, 3), integratesStatus: 'later-than', integrates: later }),
    );
    expect(found.appears.pieces).toEqual([span(1, 3, 0.5), span(1, 3, 0.5)]);
    expect(found.integrates.pieces).toEqual([span(4, 6, 1)]);
  });

  test('an event that none dates has the broad prior alone: half uniform over the axis, half never', () => {
    const found = events(says('one', integrates(4, 6)));
    expect(found.appears).toEqual({
      dated: false,
      pieces: [{ from: 140, to: 1010, weight: 0.5 }, NEVER(0.5)],
    });
    expect(found.integrates.dated).toBe(true);
  });

  test('what is dated after day 1010 counts as never, in its share of the window', () => {
    // 24 months are day 1010.5: of 18 to 30 months 181.875 days of 365.25 are on the axis
    const [on, never] = events(says('one', { ...appears(0, 1), ...integrates(18, 30) })).integrates
      .pieces;
    expect([on!.from, on!.to]).toEqual([fromMonths(18), 1010]);
    expect(on!.weight).toBeCloseTo((1010 - fromMonths(18)) / 365.25, 12);
    expect(never!.weight).toBeCloseTo(1 - on!.weight, 12);
  });

  test('what is dated before day 140 counts as day 140', () => {
    const weeks = { asPrinted: '16 to 24 weeks', unit: 'wkPMA' as const, low: 16, high: 24 };
    const found = events(
      says('one', { appearsStatus: 'given', appears: weeks, ...integrates(4, 6) }),
    );
    expect(found.appears.pieces).toEqual([
      { from: 140, to: 140, weight: 0.5 },
      { from: 140, to: 168, weight: 0.5 },
    ]);
  });

  test('any child may differ: nine tenths of it, and a tenth that is broad', () => {
    const { pieces } = eventsOf(windowsOf([says('one', integrates(4, 6))])).integrates;
    expect(pieces.map(({ from, to }) => [from, to])).toEqual([
      [fromMonths(4), fromMonths(6)],
      [140, 1010],
      [Infinity, Infinity],
    ]);
    expect(pieces.map(({ weight }) => weight.toFixed(12))).toEqual(
      [0.9, 0.05, 0.05].map((weight) => weight.toFixed(12)),
    );
  });
});

describe('it comes before it goes', () => {
  const uniform: EventPrior = { pieces: [{ from: 300, to: 310, weight: 1 }], dated: true };

  test('also without visits: of two days in one window it comes on the earlier and goes on the later', () => {
    const course = new Inferred(new Prior(uniform, uniform), [], 0);
    // both by the middle: a quarter; neither: a quarter
    const { notYet, there, gone } = course.states(305);
    expect(notYet).toBeCloseTo(0.25, 12);
    expect(there).toBeCloseTo(0.5, 12);
    expect(gone).toBeCloseTo(0.25, 12);
  });

  test('what never comes never goes', () => {
    const half: EventPrior = {
      pieces: [{ from: 300, to: 310, weight: 0.5 }, NEVER(0.5)],
      dated: true,
    };
    const course = new Inferred(new Prior(half, uniform), [], 0);
    // 0.5 never comes, 0.25 comes and then goes, 0.25 is ruled out
    expect(course.never('appears')).toBeCloseTo(2 / 3, 12);
    expect(course.never('integrates')).toBeCloseTo(2 / 3, 12);
    expect(course.dates('integrates').median).toBe(Infinity);
  });
});

test('a response is missed 1 time in 10, and every second time where its absence tells little', () => {
  const priors = new Priors(ATLAS, sheetOf(ATLAS, 'default'));
  const visits = (['moro', 'atnr'] as const).map((reflex) =>
    childCase({ born: '2026-01-01', gestation: '40w0d' }, [
      { on: '2026-03-01', findings: [[reflex, 'left', 'not-elicited']] },
    ]),
  );
  const [moro, atnr] = visits.map((record) => new ChildReading(record, priors));
  expect(ATLAS.reflexes.get('moro')!.absence.tells).toBe('tells');
  expect(ATLAS.reflexes.get('atnr')!.absence.tells).toBe('tells-little');
  expect(moro!.course('moro')!.likelihood).toEqual([seen(339, false, 0.1)]);
  expect(atnr!.course('atnr')!.likelihood).toEqual([seen(339, false, 0.5)]);
});

test('a milestone may differ from its source from day 280 on: a twentieth uniform, a twentieth never', () => {
  const milestone = ATLAS.milestones.get('walking')!;
  const [wide, strict] = [milestonePrior(milestone)!, milestonePrior(milestone, 0)!];
  const by = (prior: typeof wide, day: number) => new Inferred(prior, [], 0).by('appears', day);
  expect(by(wide, 280)).toBe(0);
  // half of the axis from 280 to 1010 is by day 645, of which the other nine tenths have as much as before
  expect(by(wide, 645)).toBeCloseTo(0.9 * by(strict, 645) + 0.05 * 0.5, 12);
  expect(1 - by(wide, 2000)).toBeCloseTo(0.05 + 0.9 * (1 - by(strict, 2000)), 12);
});
