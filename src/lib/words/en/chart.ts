/** English for the chart. It is asked by codes and numbers; a child's record gives it the clocks. */
import { TERM_DAYS, type AxisDay } from '../../age/axis.ts';
import { agesOn, dateAtAxisDay, type Birth, type CorrectionLimits } from '../../age/clocks.ts';
import { formatGestation } from '../../age/gestation.ts';
import { parseCivil } from '../../age/civil.ts';
import type { Atlas, SourceCount, SourcedClaim, SourcedCount } from '../../atlas/atlas.ts';
import type { Claim, Group, Side, Station } from '../../atlas/types.ts';
import type { Response } from '../../case/finding.ts';
import type { Phase } from '../../judge/phases.ts';
import type { FitKind } from '../../judge/reading/fit.ts';
import type { OrderWord } from '../../judge/reading/order.ts';
import type { OpenReason } from '../../judge/reading/orders.ts';
import type { OrderAsks } from '../../judge/sequence.ts';
import {
  axisWords,
  chronologicalWords,
  correctedWords,
  dateWords,
  shortDateWords,
  spanWords,
} from './ages.ts';
import { apart, groups, sides, sourcesOfWords, sourcesWords } from './atlas.ts';
import { responses } from './case.ts';
import { fitKind, fitWords, inferred, orderWords } from './inferred.ts';

/** What is said of a sequence, as the chart hands it over. */
interface OrderSaid {
  order: OrderWord;
  reason: OpenReason | null;
  asks: OrderAsks;
}

type Stretch = { from: AxisDay; to: AxisDay };

/** A lane at an age, as the chart hands it over. */
interface LaneAt {
  id: string;
  figures: { appears: Stretch | null; integrates: Stretch | null; lifelong: boolean };
  sources: SourceCount;
  /** Those of them that speak of the age. */
  speaking: SourceCount;
  age: AxisDay;
  expected: number | null;
  said: readonly { short: string; phase: Phase | undefined; claim: SourcedClaim | undefined }[];
  counted: readonly (CountAt & { near: boolean })[];
  /** Which variant was tested, where findings say it. */
  tested?: readonly { on: string; variant: string }[];
}

/** A count of infants as a point of the chart. */
interface CountAt {
  count: SourcedCount;
  /** Share with the response, 0 to 1, and its 95 % interval. */
  share: number;
  interval: { low: number; high: number } | null;
}

const whole = (share: number): string => String(Math.round(share * 100));

/** A count of infants: `Shapiro et al. 1981, 6 months: 42 % of 249 (36 to 48 %)`. */
function pointWords({ count, share, interval }: CountAt): string {
  const measure = count.measure === 'present' ? '' : ` ${count.measure}`;
  const of = count.n === null ? '' : ` of ${count.n}`;
  const range = interval ? ` (${whole(interval.low)} to ${whole(interval.high)} %)` : '';
  const about = count.qualifier === '~' ? 'about ' : '';
  return `${count.source.short}, ${count.asPrinted}: ${about}${whole(share)} %${of}${measure}${range}`;
}

/** Names of the sequences on the chart, short enough for its margin. */
const SEQUENCES: Readonly<Record<string, string>> = {
  'arms-then-legs': 'Limb dissociation',
  'protective-directions': 'Protective reactions',
  'downward-then-forward': 'Legs, then arms',
  'moro-before-sitting': 'Before sitting',
  'stnr-before-crawling': 'Before crawling',
  'plantar-before-standing': 'Before standing',
  'forward-before-walking': 'Before walking',
  'atnr-before-rolling': 'Before rolling',
  'palmar-before-reaching': 'Before reaching',
};

/** Short names of stations within an order that already says the rest. */
const STATIONS: Readonly<Record<string, string>> = {
  'protective-forward': 'forward',
  'protective-sideways': 'sideways',
  'protective-backward': 'backward',
};

export const phases: Record<Phase, string> = {
  'not-yet': 'not yet',
  emerging: 'emerging',
  established: 'established',
  integrating: 'integrating',
  integrated: 'integrated',
};

/** When a response appears, as one source prints it. */
export function appearsAsPrinted(claim: Claim): string {
  if (claim.appears) return claim.appears.asPrinted;
  if (claim.appearsWords) return claim.appearsWords;
  return claim.appearsStatus === 'implied' ? 'in the newborn' : 'not stated';
}

/** When it goes, as one source prints it. */
export function integratesAsPrinted(claim: Claim): string {
  if (claim.integrates) return claim.integrates.asPrinted;
  if (claim.integratesWords) return claim.integratesWords;
  return claim.integratesStatus === 'persists' ? 'stays for life' : 'not stated';
}

/** Both, for the row of a source. */
export const claimWords = (claim: Claim): string =>
  `${appearsAsPrinted(claim)} → ${integratesAsPrinted(claim)}`;

/** Whose ages are said, and whether no date may be. */
interface WhoseAges {
  label: string;
  birth: Birth;
  limits: CorrectionLimits;
  dateless?: boolean;
}

/** The age on the axis in every clock of a child: the one that counts first. */
function childClocks({ birth, limits, dateless }: WhoseAges, day: AxisDay): string[] {
  const on = dateAtAxisDay(birth, day, limits);
  const ages = agesOn(birth, on, limits);
  const weeks = formatGestation(Math.max(0, ages.postmenstrualDays));
  const dates = dateless ? [] : [dateWords(on)];
  if (ages.chronologicalDays < 0) return [weeks, 'before birth', ...dates];
  const since = `${chronologicalWords(ages, birth.born)} chronological`;
  const corrected = `${correctedWords(ages)} corrected`;
  const counted = ages.counts === 'corrected' ? [corrected, since] : [since, corrected];
  return [...counted, `${weeks} postmenstrual`, ...dates];
}

const plainClocks = (day: AxisDay): string[] =>
  day < TERM_DAYS
    ? [`${formatGestation(Math.round(day))} postmenstrual`]
    : [`${axisWords(day)} after term`, `${formatGestation(Math.round(day))} postmenstrual`];

/** What the sources say at an age, gathered by phase and named: `established: Nelson, Bates`. */
function byPhase(said: LaneAt['said']): string[] {
  const speaking = (Object.keys(phases) as Phase[]).flatMap((phase) => {
    const sources = said.filter((one) => one.phase === phase).map((one) => one.short);
    return sources.length > 0 ? [`${phases[phase]}: ${sources.join(', ')}`] : [];
  });
  return speaking.length > 0 ? [speaking.join('; ')] : [];
}

/** Every text of the chart, for an atlas and, where there is one, a child. */
export function chartWords(atlas: Atlas, child?: WhoseAges) {
  const name = (id: string): string => atlas.reflexes.get(id)?.short ?? id;
  const milestone = (id: string): string => atlas.milestones.get(id)?.short ?? id;
  const clocks = (day: AxisDay): string[] => (child ? childClocks(child, day) : plainClocks(day));
  const stretch = (s: Stretch | null): string => (s ? spanWords(s.from, s.to) : 'not dated');
  const share = (expected: number | null): string =>
    expected === null ? 'no source gives an age' : expected.toFixed(2);
  const ends = ({ integrates, lifelong }: LaneAt['figures']): string =>
    integrates
      ? `integrates ${stretch(integrates)}${lifelong ? ', or stays for life' : ''}`
      : lifelong
        ? 'stays for life'
        : 'no end dated';
  const figures = (id: string, of: LaneAt['figures'], sources: SourceCount): string =>
    `${name(id)}: appears ${stretch(of.appears)}, ${ends(of)}, ${sourcesWords(sources)}`;
  /** What is expected, and by how many of the sources: those that are silent expect nothing. */
  const expectedBy = ({ expected, speaking, sources }: LaneAt): string => {
    if (expected === null) return share(expected);
    const some = speaking.sources < sources.sources;
    return `${share(expected)} by ${some ? sourcesOfWords(speaking, sources) : sourcesWords(sources)}`;
  };
  /** "tested: propping 3 Mar, parachute 5 May"; without dates where none may be said. */
  const testedWords = ({ tested = [] }: LaneAt): string => {
    const said = tested.map(({ on, variant }) => {
      const date = child?.dateless ? undefined : parseCivil(on);
      return date ? `${variant} ${shortDateWords(date)}` : variant;
    });
    return said.length > 0 ? `tested: ${[...new Set(said)].join(', ')}` : '';
  };
  const station = (s: Station): string => {
    switch (s.event) {
      case 'appears':
        return STATIONS[s.reflex] ?? name(s.reflex);
      case 'integrates':
        return `${name(s.reflex)} integrated`;
      case 'sets-apart':
        return apart[s.apart];
      case 'reached':
        return milestone(s.milestone);
    }
  };
  const sequence = (id: string): string => {
    const short = SEQUENCES[id];
    if (short) return short;
    const found = atlas.sequences.find((s) => s.id === id);
    return found ? found.stations.map(station).join(', then ') : id;
  };
  return {
    chart: child
      ? `Reflexes and reactions by age, with what was seen in ${child.label}`
      : 'Reflexes and reactions by age',
    lanes: 'Lanes',
    sequences: 'Sequences',
    ageLine: 'Age marker',
    reflex: name,
    group: (group: Group): string => groups[group],
    milestone,
    milestones: 'Motor milestones',
    tick: (age: { unit: string; value: number }): string => String(age.value),
    weeksCaption: ['weeks of gestation', 'weeks', 'wk'],
    monthsCaption: ['months after term', 'months', 'mo'],
    term: 'term',
    clocks,
    claim: claimWords,
    laneFigures: figures,
    lane: (at: LaneAt): string =>
      `${figures(at.id, at.figures, at.sources)}; at ${clocks(at.age)[0] ?? ''} expected ${expectedBy(at)}${
        at.counted.length > 0 ? `; counted: ${at.counted.map(pointWords).join('; ')}` : ''
      }${at.tested ? `; ${testedWords(at)}` : ''}`,
    count: pointWords,
    readout: (at: LaneAt): { title: string; lines: string[] } => ({
      title: `${name(at.id)} at ${clocks(at.age)[0] ?? ''}: expected ${expectedBy(at)}`,
      lines: [
        ...(at.tested ? [`Judged as what was ${testedWords(at)}`] : []),
        ...byPhase(at.said),
        ...(at.counted.some(({ near }) => near)
          ? [
              `Counted near this age, with 95 % intervals: ${at.counted
                .filter(({ near }) => near)
                .map(pointWords)
                .join('; ')}`,
            ]
          : []),
      ],
    }),
    sequence,
    order: ({ order, reason, asks }: OrderSaid): string =>
      orderWords(order, reason, asks !== 'fits'),
    fits: inferred.fits,
    fit: (fit: Parameters<typeof fitWords>[0] & { kind: FitKind }): string =>
      `${fitKind(fit.kind)}: ${fitWords(fit)}`,
    station,
    response: (response: Response): string => responses[response],
    side: (side: Side): string => sides[side],
    key: {
      ridge:
        'height: how strongly the sources expect it; dots: infants counted, with 95 % intervals',
      agreed: 'deeper: all sources say established',
      course: 'appeared or integrated between two visits',
    },
    table: {
      caption: (age: AxisDay): string => `Every lane at ${clocks(age)[0] ?? ''}`,
      lane: 'Reflex or reaction',
      group: 'Group',
      appears: 'Appears',
      integrates: 'Integrates',
      sources: 'Sources',
      voices: 'Voices',
      expected: 'Expected',
      stretch,
      lifelong: 'stays for life',
      share,
      visit: (on: string): string => {
        const date = parseCivil(on);
        return date ? shortDateWords(date) : on;
      },
    },
  };
}
