/** The atlas, the chosen sources and a judged record, made into what the chart is given. */
import { DAYS_PER_MONTH, TERM_DAYS, toAxisDay, type AxisDay } from '../age/axis.ts';
import { addMonths, daysBetween } from '../age/civil.ts';
import { DEFAULT_LIMITS, type Birth, type CorrectionLimits } from '../age/clocks.ts';
import { DATING_SD_DAYS } from '../age/doubt.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { MilestoneWindow, Station } from '../atlas/types.ts';
import { variantName } from '../atlas/variants.ts';
import type { Course, Interval } from '../case/course.ts';
import type { Finding } from '../case/finding.ts';
import type { Compiled } from '../judge/expectation.ts';
import type { JudgedVisit, Sheet } from '../judge/judge.ts';
import type { ChildReading } from '../judge/reading/child.ts';
import type { Fit } from '../judge/reading/fit.ts';
import { FIRST_DAY, LAST_DAY } from '../judge/reading/constants.ts';
import { isAsking } from '../judge/rules/rule.ts';
import { pairAsks, reflexesAt, type SequenceCheck } from '../judge/sequence.ts';
import { appearsSaid, goesSaid, type Window } from '../judge/window.ts';
import type {
  ChartData,
  ChildData,
  CourseData,
  Density,
  LaneData,
  LaneFigures,
  MarkData,
  MilestoneData,
  OpenInterval,
  SourceBand,
  StationData,
  Stretch,
  StripData,
} from './model.ts';
import { halfHeights, ridgeOf } from './ridge.ts';

/** A child's record, judged. */
export interface JudgedChild {
  birth: Birth;
  limits?: CorrectionLimits;
  visits: readonly JudgedVisit[];
  courses: readonly Course[];
  sequences: readonly SequenceCheck[];
  /** What is inferred of the child; without it no density is drawn. */
  reading?: ChildReading;
  /** The best-fitting ages of the visit that is shown; those that are hidden are left out. */
  fits?: readonly Fit[];
  /** The visit that is shown: what asks is told from its findings; from those of every visit without one. */
  shown?: JudgedVisit;
  /** When each milestone was reached. */
  milestones?: ReadonlyMap<string, Interval>;
}

export interface ChartOptions {
  /** The lanes wanted, by reflex; all when left out. Their order is the atlas's own. */
  reflexes?: readonly string[];
  /** The sequences on top, in order; by default the two of limbs and of protective directions. */
  sequences?: readonly string[];
}

/** The sequences that are the chart's headline. */
export const HEADLINE = ['arms-then-legs', 'protective-directions'] as const;

/** Half of the 95 % spread, in standard deviations. */
const REACH = 1.96;

function bandOf(window: Window): SourceBand {
  const { claim, speaksFrom, speaksTo } = window;
  const { appearsFrom, appearsTo, integratesFrom, integratesTo } = window;
  return {
    source: claim.source.id,
    short: claim.source.short,
    speaksFrom,
    appearsFrom,
    appearsTo,
    integratesFrom,
    integratesTo,
    speaksTo,
    claim,
  };
}

function figuresOf(windows: readonly Window[]): LaneFigures {
  const starts = windows.filter((w) => w.appears !== null || w.byTerm).map(appearsSaid);
  const ends = windows.filter((w) => Number.isFinite(w.integratesTo)).map(goesSaid);
  const span = (of: readonly Stretch[]): Stretch | null =>
    of.length === 0
      ? null
      : {
          from: toAxisDay(Math.min(...of.map(({ from }) => from))),
          to: toAxisDay(Math.max(...of.map(({ to }) => to))),
        };
  return {
    appears: span(starts),
    integrates: span(ends),
    lifelong: windows.some((w) => w.lifelong),
  };
}

/** Rows of an opened lane run as the ridge does: what goes first stands on top. */
const inOrder = (a: SourceBand, b: SourceBand): number =>
  Math.min(a.integratesFrom, a.speaksTo, 1e6) - Math.min(b.integratesFrom, b.speaksTo, 1e6) ||
  Math.max(a.appearsFrom, 0) - Math.max(b.appearsFrom, 0);

function laneOf(id: string, atlas: Atlas, compiled: Compiled): LaneData {
  const ridge = ridgeOf(compiled);
  const half = halfHeights(ridge);
  return {
    id,
    group: atlas.reflexes.get(id)?.group ?? null,
    ridge,
    bands: compiled.windows.map(bandOf).sort(inOrder),
    figures: figuresOf(compiled.windows),
    counts: atlas.counts.get(id) ?? [],
    appearsBy: half.first,
    integratesBy: half.last === -Infinity ? Infinity : half.last,
  };
}

const openInterval = (interval: Interval): OpenInterval => ({
  after: interval.after ? toAxisDay(interval.after.axisDay) : null,
  by: interval.by ? toAxisDay(interval.by.axisDay) : null,
});

/** The windows of a station: of appearing, of integrating, or of reaching a milestone. */
function windowsAt(station: Station, atlas: Atlas, sheet: Sheet): Stretch[] {
  if (station.event === 'reached') {
    const milestone = atlas.milestones.get(station.milestone);
    return milestone?.window ? [milestoneStretch(milestone.window)] : [];
  }
  const windows = reflexesAt(station, atlas).flatMap((id) => sheet.get(id)?.windows ?? []);
  if (station.event === 'integrates')
    return windows.filter((w) => Number.isFinite(w.integratesTo)).map(goesSaid);
  const dated = windows.filter((w) => w.appears !== null);
  const used = dated.length > 0 ? dated : windows.filter((w) => w.byTerm);
  return used.map(appearsSaid);
}

const milestoneStretch = (m: MilestoneWindow): Stretch => ({
  from: toAxisDay(TERM_DAYS + m.p1Months * DAYS_PER_MONTH),
  to: toAxisDay(TERM_DAYS + m.p99Months * DAYS_PER_MONTH),
});

const STEP_DAYS = 7;

/** When a station came in a child: how likely in each week, the likeliest 1. */
function densityOf(station: Station, reading: ChildReading): Density | undefined {
  const by = reading.reached(station);
  if (!by) return undefined;
  const weeks = Math.ceil((LAST_DAY - FIRST_DAY) / STEP_DAYS);
  const masses = Array.from({ length: weeks }, (_, week) => {
    const from = FIRST_DAY + week * STEP_DAYS;
    return Math.max(0, by(from + STEP_DAYS) - by(from));
  });
  const most = Math.max(...masses);
  return most > 0
    ? { from: FIRST_DAY, stepDays: STEP_DAYS, heights: masses.map((mass) => mass / most) }
    : undefined;
}

/** The median; undefined of none. */
function middleOf(values: readonly number[]): number | undefined {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[sorted.length >> 1];
  const lower = sorted[(sorted.length - 1) >> 1];
  return upper === undefined || lower === undefined || upper === lower
    ? upper
    : lower + (upper - lower) / 2;
}

function stationOf(
  station: Station,
  atlas: Atlas,
  sheet: Sheet,
  interval: Interval | null,
  reading: ChildReading | undefined,
): StationData {
  const windows = windowsAt(station, atlas, sheet);
  const froms = windows.map((w) => w.from as number);
  const tos = windows.map((w) => w.to as number);
  // of what was never looked at nothing is inferred but what the sources say
  const density = interval && reading ? densityOf(station, reading) : undefined;
  const of = (from: number | undefined, to: number | undefined): Stretch | null =>
    from === undefined || to === undefined ? null : { from: toAxisDay(from), to: toAxisDay(to) };
  return {
    station,
    reflexes: reflexesAt(station, atlas),
    window: windows.length === 0 ? null : of(Math.min(...froms), Math.max(...tos)),
    usual: of(middleOf(froms), middleOf(tos)),
    ...(interval ? { interval: openInterval(interval) } : {}),
    ...(density ? { density } : {}),
  };
}

function stripsOf(
  atlas: Atlas,
  sheet: Sheet,
  ids: readonly string[],
  child: JudgedChild | undefined,
): StripData[] {
  return ids.flatMap((id): StripData[] => {
    const sequence = atlas.sequences.find((s) => s.id === id);
    if (!sequence) return [];
    const check = child?.sequences.find((c) => c.sequence.id === id);
    return [
      {
        id,
        stations: sequence.stations.map((station, index) =>
          stationOf(
            station,
            atlas,
            sheet,
            check?.stations[index]?.interval ?? null,
            child?.reading,
          ),
        ),
        ...(check
          ? {
              said: { order: check.order, reason: check.reason, asks: check.asks },
              stepAsks: check.pairs
                .filter(({ first, second }) => second === first + 1)
                .map(pairAsks),
            }
          : {}),
      },
    ];
  });
}

function coursesOf(courses: readonly Course[]): CourseData[] {
  const both = (
    { reflex, side }: Course,
    event: CourseData['event'],
    interval: Interval | null,
  ): CourseData[] =>
    interval?.after && interval.by
      ? [
          {
            reflex,
            side,
            event,
            from: toAxisDay(interval.after.axisDay),
            to: toAxisDay(interval.by.axisDay),
          },
        ]
      : [];
  return courses.flatMap((course) => [
    ...both(course, 'appeared', course.appeared),
    ...both(course, 'integrated', course.integrated),
  ]);
}

/** The name of the variant that a finding says, for its mark. */
function variantOf({ reflex, variant }: Finding, atlas: Atlas): Pick<MarkData, 'variant'> {
  const pattern = atlas.reflexes.get(reflex)?.patterns.find((one) => one.variant === variant);
  return variant !== undefined && pattern ? { variant: variantName(pattern).toLowerCase() } : {};
}

function childOf(child: JudgedChild, wanted: ReadonlySet<string>, atlas: Atlas): ChildData {
  const { birth, limits = DEFAULT_LIMITS, shown } = child;
  const preterm = birth.gestationalDays < limits.pretermBelowDays;
  const fits = (child.fits ?? [])
    .filter(({ hidden }) => hidden === null)
    .map(({ kind, median, low, high }) => ({ kind, median, low, high }));
  const untilDays = daysBetween(birth.born, addMonths(birth.born, limits.untilMonths));
  return {
    visits: child.visits.map(({ visit, ages }) => ({
      day: ages.axisDay,
      spreadDays: REACH * ages.sdDays,
      on: visit.on,
    })),
    marks: child.visits.flatMap(({ visit, ages, findings }, index) => {
      const asking = new Set(
        findings.filter(({ attention }) => isAsking(attention)).map(({ given }) => given),
      );
      return visit.findings
        .filter((finding) => wanted.has(finding.reflex))
        .map((finding) => ({
          reflex: finding.reflex,
          side: finding.side,
          response: finding.response,
          ...variantOf(finding, atlas),
          day: ages.axisDay,
          spreadDays: REACH * ages.sdDays,
          visit: index,
          asks: (shown === undefined || shown.visit === visit) && asking.has(finding),
        }));
    }),
    courses: coursesOf(child.courses).filter((course) => wanted.has(course.reflex)),
    spread: preterm
      ? {
          halfDays: REACH * DATING_SD_DAYS[birth.dating],
          until: toAxisDay(birth.gestationalDays + untilDays),
        }
      : null,
    ...(shown ? { flags: flagsOf(shown) } : {}),
    ...(fits.length > 0 ? { fits } : {}),
  };
}

/** The lanes of a visit that ask for something, each by what asks for most. */
function flagsOf({ findings }: JudgedVisit): Record<string, 'discuss' | 'watch'> {
  const flags: Record<string, 'discuss' | 'watch'> = {};
  for (const { finding, attention } of findings)
    if (isAsking(attention) && flags[finding.reflex] !== 'discuss')
      flags[finding.reflex] = attention === 'watch' ? 'watch' : 'discuss';
  return flags;
}

function milestonesOf(atlas: Atlas, reached?: ReadonlyMap<string, Interval>): MilestoneData[] {
  return [...atlas.milestones.values()].flatMap(({ id, window }): MilestoneData[] => {
    if (!window) return [];
    const interval = reached?.get(id);
    const looked = interval && (interval.after !== null || interval.by !== null);
    return [
      { id, ...milestoneStretch(window), ...(looked ? { interval: openInterval(interval) } : {}) },
    ];
  });
}

/** The chart's data for an atlas under the chosen sources, with one child's record laid over it. */
export function chartData(
  atlas: Atlas,
  sheet: Sheet,
  options: ChartOptions = {},
  child?: JudgedChild,
): ChartData {
  const wanted = new Set(options.reflexes ?? atlas.reflexes.keys());
  const lanes = [...atlas.reflexes.keys()].flatMap((id) => {
    const compiled = wanted.has(id) ? sheet.get(id) : undefined;
    return compiled ? [laneOf(id, atlas, compiled)] : [];
  });
  return {
    lanes,
    sequences: stripsOf(atlas, sheet, options.sequences ?? HEADLINE, child),
    milestones: milestonesOf(atlas, child?.milestones),
    ...(child ? { child: childOf(child, wanted, atlas) } : {}),
  };
}

/** Where the last visit stands; undefined without one. */
export const lastVisitDay = (data: ChartData): AxisDay | undefined =>
  data.child?.visits.at(-1)?.day;
