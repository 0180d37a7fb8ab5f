/**
 * One derived layout between two: what a talk shows while it goes from one step to the next. Lengths
 * and places run straight from the one to the other; lanes that are in both move, the others fade.
 */
import { toAxisDay } from '../age/axis.ts';
import { placeAge } from './ageline.ts';
import type { Measure } from './labels.ts';
import type { PlacedLane, PlacedLanes } from './lanes.ts';
import { placeFrame, drawLanes, NO_STRIP, type DrawnLane, type PlacedChart } from './layout.ts';
import type { ChartData, ChartView, LaneData, RidgePiece, Stretch } from './model.ts';
import type { Sizes } from './sizes.ts';
import { placeStrip, type PlacedStrip } from './strip.ts';
import type { ChartWords } from './words.ts';

/** A chart as it stands, with what it was placed from. */
export interface Standing {
  data: ChartData;
  view: ChartView;
  placed: PlacedChart;
}

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

export const mixStretch = (a: Stretch, b: Stretch, share: number): Stretch => ({
  from: toAxisDay(between(a.from, b.from, share)),
  to: toAxisDay(between(a.to, b.to, share)),
});

/** Every length between two; whether names stand above is taken from the nearer. */
function mixSizes(a: Sizes, b: Sizes, share: number): Sizes {
  const mixed: Sizes = { ...(share < 0.5 ? a : b) };
  for (const key of Object.keys(a) as (keyof Sizes)[])
    if (key !== 'narrow') mixed[key] = between(a[key], b[key], share);
  return mixed;
}

const pieceAt = (ridge: readonly RidgePiece[], day: number): RidgePiece | undefined =>
  ridge.find((piece) => day >= piece.from && day < piece.to);

/** A piece's height at one of the ends of a stretch that lies within it. */
const heightIn = (piece: RidgePiece | undefined, day: number): number =>
  piece ? between(piece.rise, piece.fall, (day - piece.from) / (piece.to - piece.from)) : 0;

/** The ridge between two: at every day the height lies between the two heights. */
export function mixRidge(
  a: readonly RidgePiece[],
  b: readonly RidgePiece[],
  share: number,
): readonly RidgePiece[] {
  if (a === b) return a;
  const corners = [...new Set([...a, ...b].flatMap((piece) => [piece.from, piece.to]))].sort(
    (x, y) => x - y,
  );
  return corners.slice(1).flatMap((to, index): RidgePiece[] => {
    const from = corners[index]!;
    const middle = (from + to) / 2;
    const [one, two] = [pieceAt(a, middle), pieceAt(b, middle)];
    if (!one && !two) return [];
    return [
      {
        from,
        to,
        rise: between(heightIn(one, from), heightIn(two, from), share),
        fall: between(heightIn(one, to), heightIn(two, to), share),
        agreed: (share < 0.5 ? one : two)?.agreed ?? false,
      },
    ];
  });
}

function mixLane(a: PlacedLane, b: PlacedLane, share: number): PlacedLane {
  const base = between(a.base, b.base, share);
  const near = share < 0.5 ? a : b;
  return {
    id: a.id,
    top: between(a.top, b.top, share),
    height: between(a.height, b.height, share),
    base,
    ridgePx: between(a.ridgePx, b.ridgePx, share),
    nameY: between(a.nameY, b.nameY, share),
    opened: near.opened,
    rows: near.rows.map((y) => base + y - near.base),
  };
}

/** Lanes in both move; those of one alone stay in their place and fade in or out. */
function mixLanes(a: PlacedLanes, b: PlacedLanes, share: number): PlacedLanes {
  const lanes = new Map<string, PlacedLane>();
  for (const id of new Set([...a.lanes.keys(), ...b.lanes.keys()])) {
    const [one, two] = [a.lanes.get(id), b.lanes.get(id)];
    if (one && two) lanes.set(id, mixLane(one, two, share));
    else if (one) lanes.set(id, { ...one, opacity: 1 - share });
    else if (two) lanes.set(id, { ...two, opacity: share });
  }
  const near = share < 0.5 ? a : b;
  return {
    lanes,
    order: near.order,
    headings: near.headings,
    milestones: near.milestones,
    milestonesY: near.milestonesY,
    height: between(a.height, b.height, share),
  };
}

/** The data of both, each lane once; what a child showed is taken from the nearer. */
export function mixData(a: ChartData, b: ChartData, share: number): ChartData {
  const near = share < 0.5 ? a : b;
  const second = new Map(b.lanes.map((lane) => [lane.id, lane]));
  const first = new Set(a.lanes.map((lane) => lane.id));
  const both = a.lanes.map((lane): LaneData => {
    const other = second.get(lane.id);
    if (!other) return lane;
    return {
      ...(share < 0.5 ? lane : other),
      ridge: mixRidge(lane.ridge, other.ridge, share),
    };
  });
  return { ...near, lanes: [...both, ...b.lanes.filter((lane) => !first.has(lane.id))] };
}

function mixStrip(
  a: Standing,
  b: Standing,
  share: number,
  place: (of: Standing) => PlacedStrip,
): PlacedStrip {
  const [one, two] = [a.placed.strip, b.placed.strip];
  const from = two.sequences.length > 0 ? b : a;
  if (from.placed.strip.sequences.length === 0) return NO_STRIP;
  return { ...place(from), height: between(one.height, two.height, share) };
}

/**
 * The chart between two steps.
 * @param share 0 is the first and 1 the second, each as it stands; in between every place is too
 */
export function mixLayout(
  a: Standing,
  b: Standing,
  share: number,
  words: ChartWords,
  measure: Measure,
): Standing {
  if (share <= 0) return a;
  if (share >= 1) return b;
  const near = share < 0.5 ? a : b;
  const data = mixData(a.data, b.data, share);
  const sizes = mixSizes(a.placed.sizes, b.placed.sizes, share);
  const range = mixStretch(a.view.range, b.view.range, share);
  const age = toAxisDay(between(a.view.age, b.view.age, share));
  const frame = placeFrame(range, sizes, words, measure);
  const drawn: DrawnLane[] = drawLanes(data.lanes);
  return {
    data,
    view: { ...near.view, range, age },
    placed: {
      sizes,
      drawn,
      lanes: mixLanes(a.placed.lanes, b.placed.lanes, share),
      frame,
      marks: near.placed.marks,
      courses: near.placed.courses,
      strip: mixStrip(a, b, share, (of) =>
        placeStrip(of.data.sequences, frame.scale, sizes, words, measure),
      ),
      age: placeAge(age, near.data.child?.spread ?? null, frame.scale, sizes, words, measure),
    },
  };
}
