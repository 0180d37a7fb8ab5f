/**
 * The order of things in one child: when each station of a sequence came, as the visits frame it, and for
 * every pair which came first, inferred from the sources and all visits (reading/orders.ts). A response
 * appears with its first side and has integrated with its last.
 */
import type { Ages } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import { setsApart } from '../atlas/apart.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Sequence, Station } from '../atlas/types.ts';
import type { Visit } from '../case/case.ts';
import {
  coursesOf,
  lastTests,
  milestoneReached,
  type Course,
  type Interval,
} from '../case/course.ts';
import { testOf } from '../case/finding.ts';
import type { OrderWord } from './reading/order.ts';
import type { OpenReason, PairOrder } from './reading/orders.ts';

/** A station with the reflexes that stand for it and the child's interval; null: never looked at. */
export interface Reached {
  station: Station;
  reflexes: readonly string[];
  interval: Interval | null;
}

/** What an order asks for: only one of which the sources by themselves are sure asks for anything. */
export type OrderAsks = 'discuss' | 'watch' | 'fits';

export interface SequenceCheck {
  sequence: Sequence;
  stations: readonly Reached[];
  /** Every pair but two milestones. */
  pairs: readonly PairOrder[];
  /** Of each station and the next. */
  steps: readonly OrderWord[];
  /** Reversed if any pair is, else against if any is, in order if every step is, open otherwise. */
  order: OrderWord;
  /** Why it is open: the reason of the first step that is. */
  reason: OpenReason | null;
  asks: OrderAsks;
}

/** The reflexes whose course tells of a station. */
export function reflexesAt(station: Station, atlas: Atlas): string[] {
  if (station.event === 'reached') return [];
  if (station.event === 'sets-apart')
    return [...atlas.reflexes.values()]
      .filter((reflex) => setsApart(reflex) === station.apart)
      .map((reflex) => reflex.id);
  return [station.reflex];
}

function reachedBy(
  station: Station,
  atlas: Atlas,
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
  every: readonly Course[],
): Reached {
  if (station.event === 'reached') {
    const interval = milestoneReached(visits, agesOn, station.milestone);
    const looked = interval.after !== null || interval.by !== null;
    return { station, reflexes: [], interval: looked ? interval : null };
  }
  const reflexes = reflexesAt(station, atlas);
  const courses = every.filter((course) => reflexes.includes(course.reflex) && course.answers > 0);
  const interval =
    station.event === 'integrates'
      ? lastOf(courses.map((course) => course.integrated))
      : firstOf(courses.map((course) => course.appeared));
  return { station, reflexes, interval };
}

const begins = (interval: Interval): number => interval.after?.axisDay ?? -Infinity;
const ends = (interval: Interval): number => interval.by?.axisDay ?? Infinity;

/** When the first of several happened: the earliest beginning and the earliest end. */
function firstOf(intervals: readonly Interval[]): Interval | null {
  if (intervals.length === 0) return null;
  return intervals.reduce((a, b) => ({
    after: begins(a) <= begins(b) ? a.after : b.after,
    by: ends(a) <= ends(b) ? a.by : b.by,
  }));
}

/** When the last of several happened; unknown when one of them was never seen. */
function lastOf(intervals: readonly (Interval | null)[]): Interval | null {
  const known = intervals.filter((interval) => interval !== null);
  if (known.length === 0) return null;
  return known.reduce((a, b) => ({
    after: begins(a) >= begins(b) ? a.after : b.after,
    by: ends(a) >= ends(b) ? a.by : b.by,
  }));
}

/** What a pair asks for. @see OrderAsks */
export function pairAsks({ order, sure }: Pick<PairOrder, 'order' | 'sure'>): OrderAsks {
  if (!sure) return 'fits';
  return order === 'reversed' ? 'discuss' : order === 'against' ? 'watch' : 'fits';
}

/** The word for a whole sequence from those of its pairs and of its steps. */
export function wholeOrder(pairs: readonly OrderWord[], steps: readonly OrderWord[]): OrderWord {
  if (pairs.includes('reversed')) return 'reversed';
  if (pairs.includes('against')) return 'against';
  return steps.length > 0 && steps.every((step) => step === 'in-order') ? 'in-order' : 'open';
}

/** The courses by which an order is read: of each reflex that of the test by which it was looked at last. */
function lastCourses(visits: readonly Visit[], agesOn: (on: CivilDate) => Ages): Course[] {
  const last = lastTests(visits);
  return coursesOf(visits, agesOn).filter((course) => last.get(course.reflex) === testOf(course));
}

/** One sequence in one child. @param pairs its orders, as read in the child */
export function checkSequence(
  sequence: Sequence,
  atlas: Atlas,
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
  pairs: readonly PairOrder[],
  courses: readonly Course[] = lastCourses(visits, agesOn),
): SequenceCheck {
  const stations = sequence.stations.map((station) =>
    reachedBy(station, atlas, visits, agesOn, courses),
  );
  const next = pairs.filter(({ first, second }) => second === first + 1);
  const steps = next.map(({ order }) => order);
  const asks = pairs.map(pairAsks);
  return {
    sequence,
    stations,
    pairs,
    steps,
    order: wholeOrder(
      pairs.map(({ order }) => order),
      steps,
    ),
    reason: next.find(({ reason }) => reason !== null)?.reason ?? null,
    asks: asks.includes('discuss') ? 'discuss' : asks.includes('watch') ? 'watch' : 'fits',
  };
}

/** Every sequence in one child. @param orders the pairs of each, by the id of the sequence */
export const checkSequences = (
  atlas: Atlas,
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
  orders: ReadonlyMap<string, readonly PairOrder[]>,
): SequenceCheck[] => {
  const courses = lastCourses(visits, agesOn);
  return atlas.sequences.map((one) =>
    checkSequence(one, atlas, visits, agesOn, orders.get(one.id) ?? [], courses),
  );
};

/** What a sequence's event places: an id of the events in order, for finding a cycle. */
const eventKeys = (station: Station, atlas: Atlas): string[] =>
  station.event === 'reached'
    ? [`reached ${station.milestone}`]
    : reflexesAt(station, atlas).map(
        (reflex) => `${station.event === 'integrates' ? 'integrates' : 'appears'} ${reflex}`,
      );

/** A cycle among the orders (A before B before A), as the events on it; undefined when there is none. */
export function findCycle(sequences: readonly Sequence[], atlas: Atlas): string[] | undefined {
  const after = new Map<string, Set<string>>();
  for (const { stations } of sequences)
    stations.slice(1).forEach((next, index) => {
      for (const from of eventKeys(stations[index]!, atlas))
        for (const to of eventKeys(next, atlas))
          after.set(from, (after.get(from) ?? new Set()).add(to));
    });
  const done = new Set<string>();
  const walk = (event: string, path: string[]): string[] | undefined => {
    const at = path.indexOf(event);
    if (at >= 0) return path.slice(at);
    if (done.has(event)) return undefined;
    for (const next of after.get(event) ?? []) {
      const cycle = walk(next, [...path, event]);
      if (cycle) return cycle;
    }
    done.add(event);
    return undefined;
  };
  for (const event of after.keys()) {
    const cycle = walk(event, []);
    if (cycle) return cycle;
  }
  return undefined;
}
