import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import type { Response } from '../../../src/lib/case/finding.ts';
import {
  answersAsExpected,
  seenIn,
  sidePattern,
  sideTrends,
} from '../../../src/lib/judge/reading/sides.ts';
import { childCase, type ShortFinding } from '../../support/kestrel.ts';

const TERM = { born: '2026-01-01', gestation: '40w0d' };
const visitsOf = (...days: [on: string, findings: ShortFinding[]][]) =>
  childCase(
    TERM,
    days.map(([on, findings]) => ({ on, findings })),
  ).visits;
const sides = (reflex: string, left: Response, right: Response): ShortFinding[] => [
  [reflex, 'left', left],
  [reflex, 'right', right],
];

/** What should be there at 9 months in a table made up for the test, 0 to 1. */
const EXPECTED: Record<string, number> = {
  'palmar-grasp': 0.02,
  'placing-arm': 0.9,
  'protective-forward': 0.95,
  'protective-sideways': 0.9,
  'plantar-grasp': 0.7,
};

const patternOf = (findings: ShortFinding[]) =>
  sidePattern(visitsOf(['2026-10-01', findings])[0]!, ATLAS.reflexes, (reflex) => EXPECTED[reflex]);

describe('four differences that all point to the left arm', () => {
  const findings = [
    ...sides('palmar-grasp', 'elicited', 'not-elicited'), // the left still has what should be gone
    ...sides('placing-arm', 'not-elicited', 'elicited'), // the left lacks what should be there
    ...sides('protective-forward', 'not-elicited', 'elicited'),
    ...sides('protective-sideways', 'weak', 'elicited'),
    ...sides('plantar-grasp', 'elicited', 'elicited'),
  ];
  const pattern = patternOf(findings);

  test('are said as one', () => {
    expect(pattern.differences).toHaveLength(4);
    expect(pattern.differences.map(({ why }) => why)).toEqual([
      'still-has',
      'lacks',
      'lacks',
      'lacks',
    ]);
    expect(pattern.left).toEqual({ all: 4, arm: 4, leg: 0 });
    expect(pattern.right.all).toBe(0);
    expect(pattern).toMatchObject({ side: 'left', limb: 'arm' });
  });

  test('and the side that answers as expected is not graded by the other', () => {
    const [visit] = visitsOf(['2026-10-01', findings]);
    const kept = visit!.findings.filter((finding) => answersAsExpected(pattern, finding));
    expect(kept.map(({ reflex, side }) => `${reflex} ${side}`)).toEqual([
      'palmar-grasp right',
      'placing-arm right',
      'protective-forward right',
      'protective-sideways right',
    ]);
  });
});

test('an arm and a leg of one side point to the side and to no limb', () => {
  const pattern = patternOf([
    ...sides('protective-forward', 'not-elicited', 'elicited'),
    ...sides('plantar-grasp', 'not-elicited', 'elicited'),
  ]);
  expect(pattern).toMatchObject({ side: 'left', limb: null, left: { all: 2, arm: 1, leg: 1 } });
});

test('one difference is no pattern, nor is one to each side', () => {
  expect(patternOf(sides('protective-forward', 'not-elicited', 'elicited')).side).toBeNull();
  expect(
    patternOf([
      ...sides('protective-forward', 'not-elicited', 'elicited'),
      ...sides('placing-arm', 'elicited', 'not-elicited'),
    ]).side,
  ).toBeNull();
});

test('where no source speaks, or one side gave no answer, neither side is less expected', () => {
  expect(patternOf(sides('galant', 'elicited', 'not-elicited')).differences).toEqual([]);
  expect(patternOf(sides('protective-forward', 'not-assessable', 'elicited')).differences).toEqual(
    [],
  );
});

describe('where a response is seen, computed from its limb pattern', () => {
  test.each([
    ['palmar-grasp', 'arm', false],
    ['protective-forward', 'arm', false],
    ['plantar-grasp', 'leg', false],
    ['plantar-response', 'leg', false],
    ['stepping', 'leg', false],
    ['crossed-extension', 'leg', true],
    ['atnr', null, false],
  ])('%s: %s', (reflex, limb, crossed) => {
    expect(seenIn(ATLAS.reflexes.get(reflex)!)).toEqual({ limb, crossed });
  });
});

describe('a difference between the sides over visits', () => {
  const trend = (...gaps: [Response, Response][]) =>
    sideTrends(
      visitsOf(
        ...gaps.map(([left, right], index): [string, ShortFinding[]] => [
          `2026-0${index + 1}-15`,
          sides('moro', left, right),
        ]),
      ),
    )[0];

  test('is new, stays, grows, shrinks, turns and evens out', () => {
    expect(trend(['weak', 'elicited'])).toMatchObject({ trend: 'new', stays: 1 });
    expect(trend(['weak', 'elicited'], ['weak', 'elicited'])).toMatchObject({
      trend: 'same',
      stays: 2,
    });
    expect(trend(['weak', 'elicited'], ['not-elicited', 'elicited'])!.trend).toBe('growing');
    expect(trend(['not-elicited', 'elicited'], ['weak', 'elicited'])!.trend).toBe('shrinking');
    expect(trend(['weak', 'elicited'], ['elicited', 'weak'])).toMatchObject({
      trend: 'turned',
      stays: 1,
    });
    expect(trend(['weak', 'elicited'], ['elicited', 'elicited'])).toMatchObject({
      trend: 'evened-out',
      stays: 0,
    });
  });

  test('is none where the sides always answered alike', () => {
    expect(trend(['elicited', 'elicited'], ['weak', 'weak'])).toBeUndefined();
  });
});
