import { describe, expect, test } from 'vitest';
import { clockOf, shiftsOf } from '../../../src/lib/judge/reading/clock.ts';
import { daysOf, milestoneDaysOf } from '../../../src/lib/judge/reading/days.ts';
import { DATING_SD_DAYS } from '../../../src/lib/age/doubt.ts';
import { childCase, type ShortFinding, type ShortVisit } from '../../support/kestrel.ts';

const TERM = { born: '2026-01-01', gestation: '40w0d' };
const of = (visits: ShortVisit[]) => daysOf(childCase(TERM, visits).visits);
const one = (findings: ShortFinding[]) => of([{ on: '2026-03-01', findings }]).get('moro');

describe('a day of a reflex', () => {
  test('is there if any examiner elicited any side, however faintly', () => {
    const days = of([
      { on: '2026-03-01', examiner: 'Amy', findings: [['moro', 'left', 'not-elicited']] },
      { on: '2026-03-01', examiner: 'Zed', findings: [['moro', 'right', 'weak']] },
    ]).get('moro')!;
    expect(days.whole).toEqual([{ on: '2026-03-01', there: true }]);
    expect(days.sides.left).toEqual([{ on: '2026-03-01', there: false }]);
    expect(days.sides.right).toEqual([{ on: '2026-03-01', there: true }]);
  });

  test('is not there if every side judged was not elicited', () => {
    expect(one([['moro', 'left', 'not-elicited']])!.whole).toEqual([
      { on: '2026-03-01', there: false },
    ]);
  });

  test('says nothing where it was not assessable, or not elicited in an unfit state', () => {
    expect(one([['moro', 'left', 'not-assessable']])!.whole).toEqual([]);
    expect(one([['moro', 'left', 'not-elicited', 'crying']])!.whole).toEqual([]);
    expect(one([['moro', 'left', 'not-elicited', 'crying']])!.sides.left).toBeUndefined();
  });

  test('of one side counts in an unfit state where the other side answered in the same state', () => {
    const crying = one([
      ['moro', 'left', 'not-elicited', 'crying'],
      ['moro', 'right', 'elicited', 'crying'],
    ])!;
    expect(crying.sides.left).toEqual([{ on: '2026-03-01', there: false }]);
    const apart = one([
      ['moro', 'left', 'not-elicited', 'crying'],
      ['moro', 'right', 'elicited', 'quiet-alert'],
    ])!;
    expect(apart.sides.left).toBeUndefined();
  });

  test('days are in the order of time', () => {
    const days = of([
      { on: '2026-05-01', findings: [['moro', 'left', 'not-elicited']] },
      { on: '2026-03-01', findings: [['moro', 'left', 'elicited']] },
    ]).get('moro')!;
    expect(days.whole.map(({ there }) => there)).toEqual([true, false]);
  });
});

test('a milestone was seen on a day if any examiner saw it', () => {
  const { visits } = childCase(TERM, [
    { on: '2026-08-01', examiner: 'Amy', findings: [], milestones: { sitting: false } },
    { on: '2026-08-01', examiner: 'Zed', findings: [], milestones: { sitting: true } },
  ]);
  expect(milestoneDaysOf(visits).get('sitting')).toEqual([{ on: '2026-08-01', there: true }]);
});

describe('one clock for all visits', () => {
  test('born early: corrected at any age, with the dating in doubt', () => {
    const { child, visits } = childCase(
      { born: '2026-01-01', gestation: '30w0d', dating: 'last-period' },
      [{ on: '2029-01-01', findings: [] }],
    );
    const clock = clockOf(child.birth);
    expect(clock.dayOn(visits[0]!.on)).toBe(210 + 1096);
    expect(clock.sdDays).toBe(DATING_SD_DAYS['last-period']);
  });

  test('36w6d is early and 37w0d is not; a limit of correction in months changes nothing', () => {
    const { child } = childCase({ born: '2026-01-01', gestation: '36w6d' }, []);
    const { child: term } = childCase({ born: '2026-01-01', gestation: '37w0d' }, []);
    expect(clockOf(child.birth).dayOn(child.birth.born)).toBe(258);
    expect(clockOf(term.birth).dayOn(term.birth.born)).toBe(280);
    const limits = { pretermBelowDays: 259, untilMonths: 1 };
    expect(clockOf(child.birth, limits).dayOn(child.birth.born)).toBe(258);
  });

  test('born at term: since birth, exact', () => {
    const { child, visits } = childCase({ born: '2026-01-01', gestation: '38w0d' }, [
      { on: '2026-01-31', findings: [] },
    ]);
    expect(clockOf(child.birth).dayOn(visits[0]!.on)).toBe(310);
    expect(clockOf(child.birth).sdDays).toBe(0);
  });

  test('the nodes of the shift have the mean and nearly the spread of the normal', () => {
    const nodes = shiftsOf(8);
    const sum = (of: (days: number) => number) =>
      nodes.reduce((total, { days, weight }) => total + weight * of(days), 0);
    expect(nodes).toHaveLength(15);
    expect(sum(() => 1)).toBeCloseTo(1, 12);
    expect(sum((days) => days)).toBeCloseTo(0, 12);
    expect(Math.abs(Math.sqrt(sum((days) => days * days)) - 8)).toBeLessThan(0.05);
  });
});
