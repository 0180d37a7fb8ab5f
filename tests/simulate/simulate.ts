/**
 * How the rules of reading a child do on children drawn by chance. All of it follows from a seed. These are
 * no infants: they are drawn from the sources' own windows, so that the figures say whether the rules do
 * what they are meant to, and nothing of how well the sources fit real children.
 */
import { fromMonths } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Station } from '../../src/lib/atlas/types.ts';
import type { Visit } from '../../src/lib/case/case.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { ChildReading, Priors } from '../../src/lib/judge/reading/child.ts';
import { IMAGINED, MILESTONE_MISSED } from '../../src/lib/judge/reading/constants.ts';
import { fitsOf, type FitKind } from '../../src/lib/judge/reading/fit.ts';
import { logNormalOf } from '../../src/lib/judge/reading/milestone.ts';
import { notNowOf } from '../../src/lib/judge/reading/lost.ts';
import type { PairOrder } from '../../src/lib/judge/reading/orders.ts';
import { eventsOf } from '../../src/lib/judge/reading/prior.ts';
import { reflexesAt } from '../../src/lib/judge/sequence.ts';
import { chanceOf, type Chance } from '../../src/lib/lecture/random.ts';
import {
  answerOf,
  bornAtTerm,
  drawTruth,
  finding,
  visitAt,
  type Events,
  type Truth,
} from '../support/drawnChild.ts';

const SHEET = sheetOf(ATLAS, 'default');
const PRIORS = new Priors(ATLAS, SHEET);
/** Without ODD: every healthy event is drawn from the window of some source. */
const EVENTS = new Map<string, Events>(
  [...SHEET].map(([reflex, { windows }]) => [reflex, eventsOf(windows, 0)]),
);
const missedOf = (reflex: string): number => ATLAS.reflexes.get(reflex)!.absence.missed;

/** Everything that is true of one child: courses by reflex, and days of milestones. */
interface TrueChild {
  reflexes: Map<string, Truth>;
  milestones: Map<string, number>;
}

const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());

/** Reflexes of which both events are dated can be drawn without ODD. */
const DRAWN = [...EVENTS].filter(
  ([, { appears, integrates }]) => appears.dated && integrates.dated,
);

function healthy(chance: Chance): TrueChild {
  const reflexes = new Map(
    DRAWN.map(([reflex, events]) => [reflex, drawTruth(events, () => chance.next())]),
  );
  const milestones = new Map<string, number>();
  for (const { id, window } of ATLAS.milestones.values()) {
    if (!window) continue;
    const { mu, sigma } = logNormalOf(window);
    milestones.set(id, fromMonths(Math.exp(mu + sigma * normal(chance))));
  }
  return { reflexes, milestones };
}

/** A visit at which some reflexes and every milestone are looked at. */
function visit(child: TrueChild, day: number, reflexes: readonly string[], chance: Chance): Visit {
  const found = reflexes.flatMap((reflex) => {
    const truth = child.reflexes.get(reflex);
    return truth
      ? [
          finding(
            reflex,
            answerOf(truth, day, missedOf(reflex), () => chance.next()),
          ),
        ]
      : [];
  });
  const milestones = [...child.milestones].map(([milestone, from]) => ({
    milestone,
    seen: chance.next() < (day >= from ? 1 - MILESTONE_MISSED : IMAGINED),
  }));
  return { ...visitAt(day, found), milestones };
}

const ALL = DRAWN.map(([reflex]) => reflex);
const between = (chance: Chance, from: number, to: number): number =>
  from + (to - from) * chance.next();

const readingOf = (child: TrueChild, days: readonly number[], chance: Chance): ChildReading => {
  const whole = [...new Set(days.map(Math.round))].sort((a, b) => a - b);
  return new ChildReading(bornAtTerm(whole.map((day) => visit(child, day, ALL, chance))), PRIORS);
};

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
    const orders = readingOf(child, days, chance).orders();
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

/** A child in whom the two appear the other way round, each with the other's day and its own length. */
function turnedChild({ reflexes: [first, second] }: Turned, chance: Chance): TrueChild {
  for (;;) {
    const child = healthy(chance);
    const [one, other] = [child.reflexes.get(first)!, child.reflexes.get(second)!];
    if (!Number.isFinite(other.a) || other.a < Math.max(one.a, 280) + APART) continue;
    child.reflexes.set(first, { a: other.a, i: other.a + (one.i - one.a) });
    child.reflexes.set(second, { a: one.a, i: Math.max(other.i, other.a) });
    return child;
  }
}

/** Children truly reversed with 3 or 4 visits around the change: before, one or two between, and after. */
export function reversedOrders(children: number, seed: number, turned: Turned): OrderShare {
  const chance = chanceOf(seed);
  const share = none();
  for (let left = children; left > 0; left--) {
    const child = turnedChild(turned, chance);
    const [late, early] = turned.reflexes.map((id) => child.reflexes.get(id)!.a) as [
      number,
      number,
    ];
    const from = Math.max(early, 281);
    const days = [
      between(chance, Math.max(early - 45, 281), from),
      between(chance, from, late),
      between(chance, late, late + 45),
      ...(chance.next() < 0.5 ? [between(chance, from, late)] : []),
    ];
    const pairs = readingOf(child, days, chance).orders().get(turned.sequence)!;
    count(
      share,
      pairs.find((p) => p.first === turned.first && p.second === turned.second)!,
    );
  }
  return share;
}

export interface Coverage {
  kind: FitKind;
  months: number;
  shown: number;
  covered: number;
  visits: number;
}

const REFLEXES_TESTED = 20;

/** How often a best-fitting age is shown at an age, and how often its interval then holds the age. */
export function fitCoverage(visits: number, seed: number, months: number): Coverage[] {
  const chance = chanceOf(seed);
  const kinds = ['primitive', 'postural', 'milestones'] as const;
  const found = kinds.map((kind): Coverage => ({ kind, months, shown: 0, covered: 0, visits }));
  const day = fromMonths(months);
  for (let left = visits; left > 0; left--) {
    const child = healthy(chance);
    const tested = chance.shuffled(ALL).slice(0, REFLEXES_TESTED);
    for (const fit of fitsOf(visit(child, day, tested, chance), PRIORS, 0)) {
      if (fit.hidden) continue;
      const into = found.find(({ kind }) => kind === fit.kind)!;
      into.shown++;
      if ((fit.low ?? -Infinity) <= day && day <= (fit.high ?? Infinity)) into.covered++;
    }
  }
  return found;
}

/** Healthy children of four visits with five lifelong reactions: who has one not now, and who has lost one. */
export function lostShare(children: number, seed: number): { notNow: number; lost: number } {
  const chance = chanceOf(seed);
  const lifelong = ALL.filter((id) => PRIORS.reflex(id, 0)!.neverI > 0.99).filter(
    (id) => missedOf(id) === 0.1,
  );
  let [notNow, lost] = [0, 0];
  for (let left = children; left > 0; left--) {
    const child = healthy(chance);
    const five = chance.shuffled(lifelong).slice(0, 5);
    const visits = [9, 11, 13, 15].map((at) => visit(child, fromMonths(at), five, chance));
    const found = notNowOf(new ChildReading(bornAtTerm(visits), PRIORS));
    if (found.length > 0) notNow++;
    if (found.some((one) => one.lost.length > 0)) lost++;
  }
  return { notNow, lost };
}
