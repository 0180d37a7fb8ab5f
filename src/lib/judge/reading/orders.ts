/** Every pair of stations of a sequence, read in one child. */
import type { Atlas } from '../../atlas/atlas.ts';
import type { Sequence, Station } from '../../atlas/types.ts';
import { reflexesAt } from '../sequence.ts';
import { SURE_SOURCES } from './constants.ts';
import type { Inferred } from './course.ts';
import {
  oddsRatio,
  ordersOf,
  orderWord,
  type Happening,
  type Orders,
  type OrderWord,
} from './order.ts';

/**
 * Why an order is open: no chosen source dates one of the two; one was never looked at; the sources
 * themselves overlap; both had likely happened before the first visit; or were likely still to come.
 */
export type OpenReason =
  'undated' | 'not-looked-at' | 'sources-overlap' | 'begins-too-late' | 'still-to-come';

export interface PairOrder {
  /** Indices of the stations in their sequence. */
  first: number;
  second: number;
  /** P(first before second) with the sources alone, and with the child's days. NaN where undated. */
  sourcesAlone: number;
  probability: number;
  oddsRatio: number;
  order: OrderWord;
  /** Only where the order is open. */
  reason: OpenReason | null;
  /** P(first before second) with the sources alone, if no child differs from all of them. */
  sourcesOnly: number;
  /** Whether the sources are sure enough of this order that the other way round asks for attention. */
  sure: boolean;
}

/** What is known of a station of one child: a course with its days, and the prior without ODD. */
export interface Known {
  /** Days on which it was looked at and answered, on the child's clock. */
  lookedAt: readonly number[];
  child: Inferred;
  alone: Inferred;
  strict: Inferred;
}

/** Looks up what is known of a reflex or a milestone; undefined where no source dates the event. */
export type Lookup = (
  what: { reflex: string; event: 'appears' | 'integrates' } | { milestone: string },
) => Known | undefined;

/** A station in one child: when it happened, from the courses of all that stand for it. */
export interface Place {
  known: readonly Known[];
  of: (pick: 'child' | 'alone' | 'strict') => Happening;
}

/** Undefined where no chosen source dates it. */
export function placeOf(station: Station, atlas: Atlas, lookup: Lookup): Place | undefined {
  const reached = station.event === 'reached';
  const event = station.event === 'integrates' ? 'integrates' : 'appears';
  const known = (
    reached
      ? [lookup({ milestone: station.milestone })]
      : reflexesAt(station, atlas).map((reflex) => lookup({ reflex, event }))
  ).filter((one) => one !== undefined);
  if (known.length === 0) return undefined;
  return {
    known,
    of: (pick) => ({ event, courses: known.map((one) => one[pick]), polynomial: !reached }),
  };
}

const looked = ({ known }: Place): number[] => known.flatMap(({ lookedAt }) => lookedAt);

/** P(a happening has happened by a day), over its courses. */
export function happenedBy({ event, courses }: Happening, day: number): number {
  const each = courses.map((course) => course.by(event, day));
  return event === 'appears'
    ? 1 - each.reduce((product, p) => product * (1 - p), 1)
    : each.reduce((product, p) => product * p, 1);
}

function reasonFor(first: Place, second: Place, sourcesOnly: number): OpenReason {
  const [days, others] = [looked(first), looked(second)];
  if (days.length === 0 || others.length === 0) return 'not-looked-at';
  if (!(sourcesOnly >= SURE_SOURCES)) return 'sources-overlap';
  const from = Math.min(...days, ...others);
  const to = Math.max(...days, ...others);
  const [one, other] = [first.of('child'), second.of('child')];
  const before = happenedBy(one, from) * happenedBy(other, from);
  const after = (1 - happenedBy(one, to)) * (1 - happenedBy(other, to));
  return before >= after ? 'begins-too-late' : 'still-to-come';
}

const OPEN = { sourcesAlone: NaN, probability: NaN, oddsRatio: 1, order: 'open' } as const;

/** What the sources alone say of a pair of stations; the same for every child. */
export interface SourcesSay {
  alone: Orders | undefined;
  /** P(first before second) if no child differs from all sources. */
  only: number;
}

/** Where what the sources say of a pair is kept, by sequence, stations and what was tested of them. */
export type KeptSources = Map<string, SourcesSay>;

function sourcesSay(kept: KeptSources, key: string, first: Place, second: Place): SourcesSay {
  let said = kept.get(key);
  if (!said) {
    const strict = ordersOf(first.of('strict'), second.of('strict'));
    said = {
      alone: ordersOf(first.of('alone'), second.of('alone')),
      only: strict?.firstBefore ?? NaN,
    };
    kept.set(key, said);
  }
  return said;
}

function pairOf(
  index: { first: number; second: number },
  first: Place | undefined,
  second: Place | undefined,
  say: (first: Place, second: Place) => SourcesSay,
): PairOrder {
  const undated: PairOrder = {
    ...index,
    ...OPEN,
    reason: 'undated',
    sourcesOnly: NaN,
    sure: false,
  };
  if (!first || !second) return undated;
  const { alone, only } = say(first, second);
  const unseen = looked(first).length + looked(second).length === 0;
  const child = unseen ? alone : ordersOf(first.of('child'), second.of('child'));
  if (!alone || !child) return undated;
  const ratio = oddsRatio(alone, child);
  const order = orderWord(alone.firstBefore, child.firstBefore, ratio);
  return {
    ...index,
    sourcesAlone: alone.firstBefore,
    probability: child.firstBefore,
    oddsRatio: ratio,
    order,
    reason: order === 'open' ? reasonFor(first, second, only) : null,
    sourcesOnly: only,
    sure: only >= SURE_SOURCES,
  };
}

/** Every pair of stations, not only neighbours, but for two milestones. */
export function pairsOf(
  sequence: Sequence,
  atlas: Atlas,
  lookup: Lookup,
  kept: KeptSources,
  testOf: (reflex: string) => string,
): PairOrder[] {
  const { id, stations } = sequence;
  const tested = stations.map((station) =>
    station.event === 'reached' ? '' : reflexesAt(station, atlas).map(testOf).join(','),
  );
  const places = stations.map((station) => placeOf(station, atlas, lookup));
  return stations.flatMap((station, first) =>
    stations.flatMap((other, second) =>
      second <= first || (station.event === 'reached' && other.event === 'reached')
        ? []
        : [
            pairOf({ first, second }, places[first], places[second], (a, b) =>
              sourcesSay(kept, [id, first, second, tested[first], tested[second]].join(' '), a, b),
            ),
          ],
    ),
  );
}
