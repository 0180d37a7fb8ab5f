/** What happens when, over every chosen source: something comes, something goes, a milestone is reached. */
import { fromMonths } from '../../age/axis.ts';
import { printedSpan } from '../../atlas/printed.ts';
import type { Printed, Station } from '../../atlas/types.ts';
import { reflexesAt } from '../../judge/sequence.ts';
import type { Window } from '../../judge/window.ts';
import { askedReflexes, CLEAR_DAYS, type Ground } from './ground.ts';
import type { Difficulty, Rests } from '../../words/question.ts';

/** An event with the days before which no source has it begin and by which every source has it done. */
export interface Happening {
  station: Station;
  key: string;
  /** What it is about: reflexes, or a milestone. */
  of: readonly string[];
  /** -Infinity where a source only says "there by term". */
  opens: number;
  /** Infinity where a source only says "later than". */
  closes: number;
  /** The same over the windows alone, without ages that were measured otherwise. */
  said: { from: number; to: number };
  rests: readonly Rests[];
}

export const stationKey = (station: Station): string => {
  switch (station.event) {
    case 'sets-apart':
      return `sets-apart:${station.apart}`;
    case 'reached':
      return `reached:${station.milestone}`;
    default:
      return `${station.event}:${station.reflex}`;
  }
};

type Dated = { from: number; to: number } | undefined;

/** When one window has it come or go; by term leaves open how long before. */
function dated(window: Window, event: 'appears' | 'integrates'): Dated {
  if (event === 'integrates')
    return window.integrates
      ? { from: window.integrates.from, to: window.integrates.to ?? Infinity }
      : undefined;
  if (window.appears) return window.appears;
  return window.byTerm ? { from: -Infinity, to: window.appearsTo } : undefined;
}

/** Ages a source measured otherwise: not judged by, yet enough to argue with. */
function measured(ground: Ground, reflex: string, event: 'appears' | 'integrates'): Dated[] {
  return (ground.atlas.claims.get(reflex) ?? [])
    .filter((claim) => claim.role === 'context')
    .map((claim): Printed | undefined => claim[event])
    .map((printed) => printed && printedSpan(printed));
}

function happening(station: Station, ground: Ground): Happening | undefined {
  const key = stationKey(station);
  if (station.event === 'reached') {
    const found = ground.atlas.milestones.get(station.milestone);
    if (!found?.window) return undefined; // "most by 6 months" dates no beginning
    const [from, to] = [fromMonths(found.window.p1Months), fromMonths(found.window.p99Months)];
    return {
      station,
      key,
      of: [found.id],
      opens: from,
      closes: to,
      said: { from, to },
      rests: [{ of: found.id, sources: [found.source] }],
    };
  }
  const event = station.event === 'integrates' ? 'integrates' : 'appears';
  const of = reflexesAt(station, ground.atlas);
  let opens = Infinity;
  let closes = -Infinity;
  const said = { from: Infinity, to: -Infinity };
  const rests: Rests[] = [];
  for (const reflex of of) {
    const windows = ground.sheet.get(reflex)?.windows ?? [];
    if (event === 'integrates' && windows.some((w) => w.lifelong)) return undefined;
    const sources = new Set<string>();
    for (const window of windows) {
      const span = dated(window, event);
      if (!span) continue;
      sources.add(window.claim.source.id);
      said.from = Math.min(said.from, span.from);
      said.to = Math.max(said.to, span.to);
    }
    if (sources.size < ground.leastSources) return undefined;
    opens = Math.min(opens, said.from);
    closes = Math.max(closes, said.to);
    for (const span of measured(ground, reflex, event)) {
      if (!span) continue;
      opens = Math.min(opens, span.from);
      closes = Math.max(closes, span.to);
    }
    rests.push({ of: reflex, sources: [...sources] });
  }
  return of.length === 0 ? undefined : { station, key, of, opens, closes, said, rests };
}

/** Everything that every chosen source dates, or that has a published window. */
export function happenings(ground: Ground): Happening[] {
  const { atlas } = ground;
  const stations: Station[] = [
    ...[...atlas.reflexes.keys()].flatMap((reflex): Station[] => [
      { event: 'appears', reflex },
      { event: 'integrates', reflex },
    ]),
    { event: 'sets-apart', apart: 'arms-from-each-other' },
    { event: 'sets-apart', apart: 'arms-from-legs' },
    ...[...atlas.milestones.keys()].map((id): Station => ({ event: 'reached', milestone: id })),
  ];
  return stations.flatMap((station) => happening(station, ground) ?? []);
}

/** Whether an event may be the subject of a question, by the groups that are asked about. */
export const isAsked = (one: Happening, ground: Ground): boolean =>
  !ground.isNarrowed || one.of.some((id) => ground.asked.has(id));

/** The subjects there are without looking at the sources: every event of an asked reflex. */
export const eventSubjects = (ground: Ground): string[] => [
  ...askedReflexes(ground).flatMap(({ id }) => [`appears:${id}`, `integrates:${id}`]),
  ...(ground.isNarrowed
    ? []
    : [
        'sets-apart:arms-from-each-other',
        ...[...ground.atlas.milestones.keys()].map((id) => `reached:${id}`),
      ]),
];

/** Days between the last source's first and the first source's second; below 0 they overlap. */
export const gapDays = (first: Happening, second: Happening): number => second.opens - first.closes;

/** How long that gap is, by difficulty, days. Choices of ours; a longer one than the last is absurd. */
const GAP_DAYS: Readonly<Record<Difficulty, readonly [number, number]>> = {
  easy: [75, 330],
  medium: [25, 150],
  hard: [0, 75],
};

export const fitsGap = (days: number, difficulty: Difficulty): boolean => {
  const [low, high] = GAP_DAYS[difficulty];
  return days >= low && days <= high;
};

/** Whether an order of the atlas has these two, and someone contradicts it. */
const isContradicted = (first: Happening, second: Happening, ground: Ground): boolean =>
  ground.atlas.sequences.some(({ stations, contradictedBy }) => {
    const keys = stations.map(stationKey);
    return contradictedBy.length > 0 && keys.includes(first.key) && keys.includes(second.key);
  });

/** Whether every pair of sources has the first done before the second begins, with none against it. */
export const surelyBefore = (first: Happening, second: Happening, ground: Ground): boolean =>
  gapDays(first, second) >= 0 &&
  !first.of.some((id) => second.of.includes(id)) &&
  !isContradicted(first, second, ground);

/** Whether an event is surely over, or surely ahead, at a day. */
export const isOver = (one: Happening, day: number): boolean => one.closes <= day - CLEAR_DAYS;
export const isAhead = (one: Happening, day: number): boolean => one.opens >= day + CLEAR_DAYS;

/** Coming things are compared with coming things, going ones with going ones; milestones with either. */
export const comparable = (a: Happening, b: Happening): boolean =>
  a.station.event === 'reached' ||
  b.station.event === 'reached' ||
  (a.station.event === 'integrates') === (b.station.event === 'integrates');
