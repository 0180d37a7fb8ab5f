/**
 * The pipeline: data + room + what is looked at -> one placed chart of plain objects. Each stage
 * depends on as little as it can, so that a moved age line places no lane and a zoom draws no path.
 */
import type { AxisDay } from '../age/axis.ts';
import { TERM } from '../age/axis.ts';
import { sourceCount, type SourceCount } from '../atlas/families.ts';
import { placeAge, type PlacedAge } from './ageline.ts';
import { bandPath, holdersAt, phaseIn } from './bands.ts';
import { countPoints, isNear } from './counted.ts';
import { coursesByLane, type LaneCourses } from './courses.ts';
import { fitting, type Measure } from './labels.ts';
import { orderOf, placeLanes, type PlacedLanes } from './lanes.ts';
import { marksByLane, type LaneMarks } from './marks.ts';
import {
  shownIn,
  type ChartData,
  type ChildData,
  type ChartView,
  type LaneData,
  type Shown,
  type Stretch,
} from './model.ts';
import { heightAt, ridgePaths, type RidgePaths } from './ridge.ts';
import { axisScale, matrixOf, type AxisScale } from './scale.ts';
import { sizesFor, type Beside, type Room, type Sizes } from './sizes.ts';
import { placeStrip, type PlacedStrip } from './strip.ts';
import { ticksIn, type Tick } from './ticks.ts';
import type { ChartWords, LaneReading } from './words.ts';

/** A lane's shapes in axis days: they change with the data alone. */
export interface DrawnLane {
  id: string;
  data: LaneData;
  ridge: RidgePaths;
  bands: readonly { source: string; path: string }[];
}

export const drawLanes = (lanes: readonly LaneData[]): DrawnLane[] =>
  lanes.map((data) => ({
    id: data.id,
    data,
    ridge: ridgePaths(data.ridge),
    bands: data.bands.map((band) => ({ source: band.source, path: bandPath(band) })),
  }));

/** The axis as it stands for a range. */
export interface Frame {
  scale: AxisScale;
  /** Lays geometry in days onto the plot. */
  matrix: string;
  ticks: readonly Tick[];
  /** Those of the ticks that have a figure. */
  figures: readonly Tick[];
  termX: number;
  termSeen: boolean;
  /** The ground before term: left edge and width. */
  womb: { x: number; width: number };
  captions: readonly { text: string; x: number }[];
}

export function placeFrame(
  range: Stretch,
  sizes: Sizes,
  words: ChartWords,
  measure: Measure,
): Frame {
  const scale = axisScale(range, sizes.left, sizes.right);
  const lettering = { sizePx: sizes.small };
  const termX = scale.x(TERM);
  const termSeen = termX >= scale.leftPx - 0.5 && termX <= scale.rightPx + 0.5;
  const wombTo = Math.min(Math.max(termX, scale.leftPx), scale.rightPx);
  const termHalf = termSeen ? measure(words.term, { ...lettering, weight: 650 }) / 2 : 0;
  const gap = 10 * sizes.text;
  const caption = (
    wordings: readonly string[],
    from: number,
    to: number,
    end: 'left' | 'right',
  ) => {
    const text = fitting(wordings, to - from, lettering, measure);
    if (text === undefined) return [];
    return [{ text, x: end === 'left' ? from : to - measure(text, lettering) }];
  };
  const edge = sizes.narrow ? 4 * sizes.text : 0;
  const ticks = ticksIn(scale, lettering, words, measure, [2, sizes.width - 2]);
  return {
    scale,
    matrix: matrixOf(scale),
    ticks,
    figures: ticks.filter((tick) => tick.label !== ''),
    termX,
    termSeen,
    womb: { x: scale.leftPx, width: wombTo - scale.leftPx },
    captions: [
      ...caption(words.weeksCaption, scale.leftPx - edge, wombTo - termHalf - gap, 'left'),
      ...caption(words.monthsCaption, wombTo + termHalf + gap, scale.rightPx, 'right'),
    ],
  };
}

export interface PlacedChart {
  sizes: Sizes;
  drawn: readonly DrawnLane[];
  lanes: PlacedLanes;
  frame: Frame;
  marks: readonly LaneMarks[];
  courses: readonly LaneCourses[];
  strip: PlacedStrip;
  age: PlacedAge;
}

export const NO_STRIP: PlacedStrip = { sequences: [], height: 0 };

/** Every name that stands beside a lane. */
export const namesOf = (data: ChartData, shown: Shown, words: ChartWords): Beside => ({
  names: [
    ...data.lanes.map((lane) => words.reflex(lane.id)),
    ...(shown.grouped
      ? data.lanes.flatMap(({ group }) => (group ? [words.group(group)] : []))
      : []),
    ...data.lanes
      .filter((lane) => shown.opened.has(lane.id))
      .flatMap((lane) => lane.bands.map((band) => band.short)),
    ...(shown.milestones ? data.milestones.map(({ id }) => words.milestone(id)) : []),
  ],
  titles: shown.strip ? data.sequences.map(({ id }) => words.sequence(id)) : [],
});

/** The whole chart, placed at once. */
export function layout(
  data: ChartData,
  view: ChartView,
  room: Room,
  text: number,
  words: ChartWords,
  measure: Measure,
): PlacedChart {
  const shown = shownIn(view);
  const sizes = sizesFor(data, shown, room, text, namesOf(data, shown, words), measure);
  const frame = placeFrame(view.range, sizes, words, measure);
  return {
    sizes,
    drawn: drawLanes(data.lanes),
    lanes: placeLanes(data, shown, orderOf(data.lanes, view.order), sizes),
    frame,
    marks: marksByLane(data.child?.marks ?? [], sizes.mark, shown.dense),
    courses: coursesByLane(data.child?.courses ?? [], text),
    strip: shown.strip ? placeStrip(data.sequences, frame.scale, sizes, words, measure) : NO_STRIP,
    age: placeAge(view.age, data.child?.spread ?? null, frame.scale, sizes, words, measure),
  };
}

/** How many sources a lane rests on, and how many voices. */
export const sourcesOf = (lane: LaneData): SourceCount =>
  sourceCount(lane.bands.map((band) => band.source));

/** Short names of the sources that any lane rests on, each once. */
export const sourcesIn = ({ lanes }: ChartData): string[] => [
  ...new Set(lanes.flatMap((lane) => lane.bands.map((band) => band.short))),
];

/** Which variant was tested at each visit, as far as the marks of a lane say it. */
function testedOn(id: string, { visits, marks }: ChildData): Pick<LaneReading, 'tested'> {
  const names = new Map(
    marks.flatMap(({ reflex, variant, visit }): [string, { on: string; variant: string }][] => {
      const on = visits[visit]?.on;
      return reflex === id && variant && on ? [[`${on} ${variant}`, { on, variant }]] : [];
    }),
  );
  return names.size > 0 ? { tested: [...names.values()] } : {};
}

/**
 * What the sources say of a lane at an age and, where it is opened, what was counted in infants.
 * @param child whose findings may say which variant was tested
 */
export function readLane(
  lane: LaneData,
  age: AxisDay,
  opened = false,
  child?: ChildData,
): LaneReading {
  const said = lane.bands.map((band) => ({
    source: band.source,
    short: band.short,
    phase: phaseIn(band, age),
    claim: band.claim,
  }));
  return {
    id: lane.id,
    figures: lane.figures,
    sources: sourcesOf(lane),
    age,
    speaking: sourceCount(said.filter(({ phase }) => phase).map(({ source }) => source)),
    expected: said.some((source) => source.phase) ? heightAt(lane.ridge, age) : null,
    said,
    ...(child ? testedOn(lane.id, child) : {}),
    counted: opened
      ? countPoints(lane.counts ?? []).map((point) => ({ ...point, near: isNear(point, age) }))
      : [],
  };
}

/** How many sources hold the age in each lane, in the order of the data. */
export const holdersIn = (
  lanes: readonly LaneData[],
  age: number,
  hidden?: ReadonlySet<string>,
): number[] => lanes.map((lane) => holdersAt(lane.bands, age, hidden));
