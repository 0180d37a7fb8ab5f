/**
 * Side and limb: of the findings of one visit that differ between the sides, which side is the less
 * expected one, the one that still has what should be gone or lacks what should be there.
 */
import type { CivilDate } from '../../age/civil.ts';
import type { LimbPattern, Reflex, Side } from '../../atlas/types.ts';
import type { Visit } from '../../case/case.ts';
import { reflexOf, strengthOf, testOf, type Finding } from '../../case/finding.ts';
import { answersForSide } from './days.ts';
import { EXPECTED_THERE } from './constants.ts';

export type Limb = 'arm' | 'leg';
export type BodySide = Exclude<Side, 'midline'>;

/** Where a response is seen: in one kind of limb, or in more of the body, and on which side of its stimulus. */
export interface SeenIn {
  limb: Limb | null;
  /** It is seen on the side that is not stimulated. */
  crossed: boolean;
}

interface Moves {
  armL: boolean;
  armR: boolean;
  legL: boolean;
  legR: boolean;
}

const moves = (pattern: LimbPattern): Moves => ({
  armL: pattern.armL !== 'none' || pattern.handL !== 'none',
  armR: pattern.armR !== 'none' || pattern.handR !== 'none',
  legL: pattern.legL !== 'none' || pattern.footL !== 'none',
  legR: pattern.legR !== 'none' || pattern.footR !== 'none',
});

/** Computed from the limb patterns, so that a reflex someone adds counts too. */
export function seenIn({ patterns }: Pick<Reflex, 'patterns'>): SeenIn {
  const all = patterns.map((pattern) => ({ ...moves(pattern), by: pattern.stimulusSide }));
  const arm = all.some(({ armL, armR }) => armL || armR);
  const leg = all.some(({ legL, legR }) => legL || legR);
  // a stimulus on one side is always on the left in a pattern
  const oneSided = all.filter(({ by }) => by === 'left');
  const crossed =
    oneSided.length > 0 &&
    oneSided.every(({ armL, armR, legL, legR }) => !armL && !legL && (armR || legR));
  return { limb: arm === leg ? null : arm ? 'arm' : 'leg', crossed };
}

/** One reflex whose two sides answer differently at a visit. */
export interface Difference {
  reflex: string;
  limb: Limb | null;
  /** The body side that answers less as expected, and the side as recorded of its finding. */
  pointsTo: BodySide;
  recordedSide: BodySide;
  /** It still has what should be gone, or lacks what should be there. */
  why: 'still-has' | 'lacks';
}

export interface SidePattern {
  differences: readonly Difference[];
  /** How many differences point to each side, and of those how many to an arm and to a leg. */
  left: { all: number; arm: number; leg: number };
  right: { all: number; arm: number; leg: number };
  /** The side that more of them point to; null where they are balanced, or fewer than two differ. */
  side: BodySide | null;
  /** The limb that all of them on that side point to. */
  limb: Limb | null;
}

const OTHER: Readonly<Record<BodySide, BodySide>> = { left: 'right', right: 'left' };

/** The two sides' findings of each reflex at a visit, where both answered to the same test. */
function bothSides(findings: readonly Finding[]): [Finding, Finding][] {
  return findings.flatMap((left): [Finding, Finding][] => {
    if (left.side !== 'left' || !answersForSide(left, findings)) return [];
    const right = findings.find((one) => testOf(one) === testOf(left) && one.side === 'right');
    return right && answersForSide(right, findings) ? [[left, right]] : [];
  });
}

/**
 * The pattern of one visit.
 * @param expected the mean expectation, 0 to 1, that the sources have of a test (`testOf`) at this age; NaN or
 * undefined where none speaks, and then neither side is less expected
 */
export function sidePattern(
  visit: Pick<Visit, 'findings'>,
  reflexes: ReadonlyMap<string, Reflex>,
  expected: (test: string) => number | undefined,
): SidePattern {
  const differences = bothSides(visit.findings).flatMap(([left, right]): Difference[] => {
    const gap = strengthOf(left.response) - strengthOf(right.response);
    const known = reflexes.get(left.reflex);
    const mean = expected(testOf(left));
    if (gap === 0 || !known || mean === undefined || Number.isNaN(mean)) return [];
    const why = mean >= EXPECTED_THERE ? 'lacks' : 'still-has';
    const weaker: BodySide = gap < 0 ? 'left' : 'right';
    const recordedSide = why === 'lacks' ? weaker : OTHER[weaker];
    const { limb, crossed } = seenIn(known);
    const pointsTo = crossed ? OTHER[recordedSide] : recordedSide;
    return [{ reflex: left.reflex, limb, pointsTo, recordedSide, why }];
  });
  const count = (side: BodySide) => {
    const of = differences.filter(({ pointsTo }) => pointsTo === side);
    const limbs = (limb: Limb) => of.filter((one) => one.limb === limb).length;
    return { all: of.length, arm: limbs('arm'), leg: limbs('leg') };
  };
  const [left, right] = [count('left'), count('right')];
  const side =
    differences.length < 2 || left.all === right.all
      ? null
      : left.all > right.all
        ? 'left'
        : 'right';
  const most = side === 'left' ? left : right;
  const limb =
    side === null ? null : most.arm === most.all ? 'arm' : most.leg === most.all ? 'leg' : null;
  return { differences, left, right, side, limb };
}

/** Whether a finding is on the side that answers as expected: the other side's difference is not its own. */
export const answersAsExpected = (pattern: SidePattern, finding: Finding): boolean =>
  pattern.differences.some(
    ({ reflex, recordedSide }) =>
      reflex === finding.reflex && finding.side !== 'midline' && finding.side !== recordedSide,
  );

/** How a difference between the sides goes on from one visit to the next. */
export type Trend = 'new' | 'same' | 'growing' | 'shrinking' | 'turned' | 'evened-out';

/** A difference between the sides through all visits. */
export interface SideTrend {
  reflex: string;
  /** What was tested of it (`testOf`). */
  test: string;
  /** Steps of strength by which left is stronger than right, oldest first; negative: right is. */
  gaps: readonly SideGap[];
  trend: Trend;
  /** At how many days running up to the last the same side was the stronger. */
  stays: number;
}

const trendOf = (last: number, before: number | undefined): Trend => {
  if (before === undefined || before === 0) return 'new';
  if (last === 0) return 'evened-out';
  if (Math.sign(last) !== Math.sign(before)) return 'turned';
  const more = Math.abs(last) - Math.abs(before);
  return more > 0 ? 'growing' : more < 0 ? 'shrinking' : 'same';
};

/** By how many steps of strength left is stronger than right on a day; negative: right is. */
export interface SideGap {
  on: CivilDate;
  gap: number;
}

/** The difference of each test (`testOf`) on each day on which both sides answered, oldest first. */
export function sideGaps(visits: readonly Visit[]): Map<string, SideGap[]> {
  const byTest = new Map<string, Map<CivilDate, number>>();
  for (const { on, findings } of visits)
    for (const [left, right] of bothSides(findings)) {
      const gap = strengthOf(left.response) - strengthOf(right.response);
      const dates = byTest.get(testOf(left)) ?? new Map<CivilDate, number>();
      if (Math.abs(gap) >= Math.abs(dates.get(on) ?? 0)) dates.set(on, gap);
      byTest.set(testOf(left), dates);
    }
  return new Map(
    [...byTest].map(([test, dates]) => [
      test,
      [...dates].sort(([a], [b]) => (a < b ? -1 : 1)).map(([on, gap]) => ({ on, gap })),
    ]),
  );
}

/** On how many days in a row, the last one included, the same side was the stronger; 0 where they agree. */
export function daysInARow(gaps: readonly SideGap[]): number {
  const last = gaps.at(-1)?.gap ?? 0;
  let stays = 0;
  for (const { gap } of gaps.toReversed()) {
    if (last === 0 || Math.sign(gap) !== Math.sign(last)) break;
    stays++;
  }
  return stays;
}

/** Every reflex whose sides differed at any visit. Of two visits on a day the larger difference counts. */
export function sideTrends(visits: readonly Visit[]): SideTrend[] {
  return [...sideGaps(visits)].flatMap(([test, gaps]): SideTrend[] => {
    if (gaps.every(({ gap }) => gap === 0)) return [];
    const trend = trendOf(gaps.at(-1)!.gap, gaps.at(-2)?.gap);
    return [{ reflex: reflexOf(test), test, gaps, trend, stays: daysInARow(gaps) }];
  });
}
