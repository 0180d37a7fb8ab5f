/**
 * Whether things come in their order in one child. A response appears with its first side and has
 * integrated with its last. "A before B" holds when A's interval ends before
 * B's begins, is broken when it surely came after, and is open otherwise.
 */
import type { Ages } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import { setsApart } from '../atlas/apart.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Sequence, Station } from '../atlas/types.ts';
import type { Visit } from '../case/case.ts';
import { coursesOf, milestoneReached, type Course, type Interval } from '../case/course.ts';

export type Order = 'holds' | 'broken' | 'open';

/** A station with the reflexes that stand for it and the child's interval; null: never looked at. */
export interface Reached {
  station: Station;
  reflexes: readonly string[];
  interval: Interval | null;
}

export interface SequenceCheck {
  sequence: Sequence;
  stations: readonly Reached[];
  /** Between each station and the next. */
  steps: readonly Order[];
  order: Order;
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

/** Order of two intervals; an unknown one leaves it open. */
export function orderOf(a: Interval | null, b: Interval | null): Order {
  if (!a || !b) return 'open';
  const aEnd = a.by?.axisDay ?? Infinity;
  const bBegin = b.after?.axisDay ?? -Infinity;
  if (aEnd <= bBegin) return 'holds';
  const bEnd = b.by?.axisDay ?? Infinity;
  const aBegin = a.after?.axisDay ?? -Infinity;
  return bEnd <= aBegin ? 'broken' : 'open';
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

/** One sequence in one child: broken if any step is, holds if every step does, open otherwise. */
export function checkSequence(
  sequence: Sequence,
  atlas: Atlas,
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
  courses: readonly Course[] = coursesOf(visits, agesOn),
): SequenceCheck {
  const stations = sequence.stations.map((station) =>
    reachedBy(station, atlas, visits, agesOn, courses),
  );
  const steps = stations
    .slice(1)
    .map((next, index) => orderOf(stations[index]!.interval, next.interval));
  const order = steps.includes('broken')
    ? 'broken'
    : steps.every((step) => step === 'holds')
      ? 'holds'
      : 'open';
  return { sequence, stations, steps, order };
}

export const checkSequences = (
  atlas: Atlas,
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
): SequenceCheck[] => {
  const courses = coursesOf(visits, agesOn);
  return atlas.sequences.map((one) => checkSequence(one, atlas, visits, agesOn, courses));
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
