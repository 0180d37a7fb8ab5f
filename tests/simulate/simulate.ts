/**
 * How the rules of reading a child do on children drawn by chance. All of it follows from a seed. These are
 * no infants: they are drawn from the sources' own windows, so that the figures say whether the rules do
 * what they are meant to, and nothing of how well the sources fit real children.
 */
import { fromMonths, TERM } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Station } from '../../src/lib/atlas/types.ts';
import { fitsOf, type FitKind } from '../../src/lib/judge/reading/fit.ts';
import { notNowOf } from '../../src/lib/judge/reading/lost.ts';
import type { PairOrder } from '../../src/lib/judge/reading/orders.ts';
import { reflexesAt } from '../../src/lib/judge/sequence.ts';
import { chanceOf, type Chance } from '../../src/lib/lecture/random.ts';
import {
  ALL,
  between,
  healthy,
  missedOf,
  PRIORS,
  readingOf,
  visit,
  type TrueChild,
} from './children.ts';

export interface OrderShare {
  pairs: number;
  reversed: number;
  against: number;
  inOrder: number;
}

const none = (): OrderShare => ({ pairs: 0, reversed: 0, against: 0, inOrder: 0 });

function count(into: OrderShare, { order }: PairOrder): void {
  into.pairs++;
  if (order === 'reversed') into.reversed++;
  if (order === 'against') into.against++;
  if (order === 'in-order') into.inOrder++;
}

/** The true day of a station; undefined where it cannot be drawn. */
function trueDay(station: Station, { reflexes, milestones }: TrueChild): number | undefined {
  if (station.event === 'reached') return milestones.get(station.milestone);
  const truths = reflexesAt(station, ATLAS).flatMap((id) => reflexes.get(id) ?? []);
  if (truths.length === 0) return undefined;
  return station.event === 'integrates'
    ? Math.max(...truths.map(({ i }) => i))
    : Math.min(...truths.map(({ a }) => a));
}

/**
 * Orders of healthy children of 2 to 4 visits from 1 to 14 months: those the sources are sure of, and all
 * that are true of the child.
 */
export function healthyOrders(
  children: number,
  seed: number,
): { sure: OrderShare; kept: OrderShare } {
  const chance = chanceOf(seed);
  const [sure, kept] = [none(), none()];
  for (let left = children; left > 0; left--) {
    const child = healthy(chance);
    const days = Array.from({ length: chance.whole(2, 4) }, () =>
      between(chance, fromMonths(1), fromMonths(14)),
    );
    const orders = readingOf(child, days, { reflexes: ALL }, chance).orders();
    for (const { id, stations } of ATLAS.sequences)
      for (const pair of orders.get(id)!) {
        if (pair.sure) count(sure, pair);
        const [a, b] = [pair.first, pair.second].map((at) => trueDay(stations[at]!, child));
        if (a !== undefined && b !== undefined && a < b) count(kept, pair);
      }
  }
  return { sure, kept };
}

/** Two stations of the atlas of which the second truly comes first in the children drawn. */
export interface Turned {
  sequence: string;
  first: number;
  second: number;
  reflexes: readonly [string, string];
}

export const TURNED: readonly Turned[] = [
  { sequence: 'arms-then-legs', first: 0, second: 1, reflexes: ['atnr', 'stnr'] },
  {
    sequence: 'protective-directions',
    first: 0,
    second: 1,
    reflexes: ['protective-forward', 'protective-sideways'],
  },
  {
    sequence: 'protective-directions',
    first: 0,
    second: 2,
    reflexes: ['protective-forward', 'protective-backward'],
  },
  {
    sequence: 'protective-directions',
    first: 1,
    second: 2,
    reflexes: ['protective-sideways', 'protective-backward'],
  },
];

/** The least days between the two, so that a visit fits between them. */
const APART = 30;

/** The first visit and the last lie at most so many days from the change, and none before birth at term. */
const AROUND = 45;
const AFTER_BIRTH = 281;

/** A child in whom the two appear the other way round, each with the other's day and its own length. */
function turnedChild({ reflexes: [first, second] }: Turned, chance: Chance): TrueChild {
  for (;;) {
    const child = healthy(chance);
    const [one, other] = [child.reflexes.get(first)!, child.reflexes.get(second)!];
    if (!Number.isFinite(other.a) || other.a < Math.max(one.a, TERM) + APART) continue;
    child.reflexes.set(first, { a: other.a, i: other.a + (one.i - one.a) });
    child.reflexes.set(second, { a: one.a, i: Math.max(other.i, other.a) });
    return child;
  }
}

/**
 * Children truly reversed with visits around the change: one before, one or two between the one and the
 * other, and one after. Only the two reflexes are looked at.
 */
export function reversedOrders(
  children: number,
  seed: number,
  turned: Turned,
  visitsBetween: 1 | 2,
): OrderShare {
  const chance = chanceOf(seed);
  const share = none();
  for (let left = children; left > 0; left--) {
    const child = turnedChild(turned, chance);
    const [late, early] = turned.reflexes.map((id) => child.reflexes.get(id)!.a) as [
      number,
      number,
    ];
    const from = Math.max(early, AFTER_BIRTH);
    const days = [
      between(chance, Math.max(early - AROUND, AFTER_BIRTH), from),
      ...Array.from({ length: visitsBetween }, () => between(chance, from, late)),
      between(chance, late, late + AROUND),
    ];
    const looked = { reflexes: turned.reflexes, milestones: false };
    const pairs = readingOf(child, days, looked, chance).orders().get(turned.sequence)!;
    count(
      share,
      pairs.find((p) => p.first === turned.first && p.second === turned.second)!,
    );
  }
  return share;
}

/** The counts of several together. */
export const summed = (shares: readonly OrderShare[]): OrderShare =>
  shares.reduce(
    (sum, one) => ({
      pairs: sum.pairs + one.pairs,
      reversed: sum.reversed + one.reversed,
      against: sum.against + one.against,
      inOrder: sum.inOrder + one.inOrder,
    }),
    none(),
  );

export interface Coverage {
  kind: FitKind;
  months: number;
  shown: number;
  covered: number;
  visits: number;
}

/** How many reflexes are looked at in a visit. */
export const REFLEXES_TESTED = 20;

/** How often a best-fitting age is shown at an age, and how often its interval then holds the age. */
export function fitCoverage(visits: number, seed: number, months: number): Coverage[] {
  const chance = chanceOf(seed);
  const kinds = ['primitive', 'postural', 'milestones'] as const;
  const found = kinds.map((kind): Coverage => ({ kind, months, shown: 0, covered: 0, visits }));
  const day = fromMonths(months);
  for (let left = visits; left > 0; left--) {
    const child = healthy(chance);
    const tested = chance.shuffled(ALL).slice(0, REFLEXES_TESTED);
    for (const fit of fitsOf(visit(child, day, { reflexes: tested }, chance), PRIORS, 0)) {
      if (fit.hidden) continue;
      const into = found.find(({ kind }) => kind === fit.kind)!;
      into.shown++;
      if ((fit.low ?? -Infinity) <= day && day <= (fit.high ?? Infinity)) into.covered++;
    }
  }
  return found;
}

/** The four visits of the children that follow, in months: while reactions still appear, and after. */
export const LOST_VISITS: readonly (readonly number[])[] = [
  [3, 5, 7, 9],
  [5, 7, 9, 12],
  [9, 11, 13, 15],
  [15, 17, 19, 21],
];

/**
 * Healthy children in whom five lifelong reactions are looked at on some visits: who has one that was seen
 * before and is not now, and who has lost one.
 */
export function lostShare(
  children: number,
  seed: number,
  months: readonly number[],
): { notNow: number; lost: number } {
  const chance = chanceOf(seed);
  const lifelong = ALL.filter((id) => PRIORS.reflex(id, 0)!.neverI > 0.99).filter(
    (id) => missedOf(id) === 0.1,
  );
  let [notNow, lost] = [0, 0];
  for (let left = children; left > 0; left--) {
    const child = healthy(chance);
    const looked = { reflexes: chance.shuffled(lifelong).slice(0, 5), milestones: false };
    const found = notNowOf(readingOf(child, months.map(fromMonths), looked, chance));
    if (found.length > 0) notNow++;
    if (found.some((one) => one.lost.length > 0)) lost++;
  }
  return { notNow, lost };
}
