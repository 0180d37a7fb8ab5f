/**
 * Findings as marks. A mark is told by its shape: filled, ring, half filled, barred, doubly ringed,
 * dash. Each shape is a few strokes of fixed width at places kept in axis days, so that all marks of
 * a lane and side that share a stroke are one path, and a zoom moves them without redrawing any.
 */
import type { Side } from '../atlas/types.ts';
import type { Response } from '../case/finding.ts';
import type { MarkData } from './model.ts';

/** Marks of one side stand this far from the centre of their visit; left is left. */
export const SIDE_PX: Readonly<Record<Side, number>> = { left: -5.2, right: 5.2, midline: 0 };

/** A stroke: its width and, for upright segments, where it begins and ends; y grows downward. px. */
export interface Stroke {
  width: number;
  from: number;
  to: number;
  cap: 'round' | 'butt';
  ink: 'mark' | 'paper';
}

const dot = (width: number, ink: Stroke['ink']): Stroke => ({
  width,
  from: 0,
  to: 0,
  cap: 'round',
  ink,
});
const bar = (width: number, from: number, to: number, ink: Stroke['ink'] = 'mark'): Stroke => ({
  width,
  from,
  to,
  cap: 'butt',
  ink,
});

/** All bars are as wide: the lower half of a disc within its ring, the bar above, the dash. */
const BAR_PX = 7;

/** The strokes in the order they are laid. */
export const STROKES = {
  plate: bar(12, -9.2, -4, 'paper'),
  ring: dot(11.4, 'mark'),
  space: dot(8.6, 'paper'),
  dot: dot(9.2, 'mark'),
  core: dot(5.8, 'mark'),
  hollow: dot(6.2, 'paper'),
  half: bar(BAR_PX, 0, 2.9),
  over: bar(BAR_PX, -7.6, -5.8),
  dash: bar(BAR_PX, -0.9, 0.9),
} as const satisfies Readonly<Record<string, Stroke>>;

export type StrokeName = keyof typeof STROKES;

const STROKE_NAMES = Object.keys(STROKES) as StrokeName[];

/** Bars are laid with one pen, so that a lane's bars are one path. */
const PEN: Readonly<Partial<Record<StrokeName, StrokeName>>> = { over: 'half', dash: 'half' };

/** Which strokes make up a response. */
const SHAPES: Readonly<Record<Response, readonly StrokeName[]>> = {
  'not-elicited': ['dot', 'hollow'],
  weak: ['dot', 'hollow', 'half'],
  elicited: ['dot'],
  brisk: ['plate', 'dot', 'over'],
  obligatory: ['ring', 'space', 'core'],
  'not-assessable': ['dash'],
};

export const strokesOf = (response: Response): readonly StrokeName[] => SHAPES[response];

/** The diameter of the paper behind a mark; two of them and a bar between make a pair's capsule. */
export const CAPSULE_PX = 13;

const rounded = (value: number): number => Math.round(value * 100) / 100;

/** One stroke of a mark at a day, as a piece of a path; `unit` scales pixels. */
export function strokePath(name: StrokeName, day: number, unit: number): string {
  const { from, to } = STROKES[name];
  return `M${rounded(day)} ${rounded(from * unit)}${from === to ? 'h0' : `V${rounded(to * unit)}`}`;
}

/** Marks of one place, to be drawn so many pixels from the centre of their visit. */
export interface SideMarks {
  side: Side;
  /** Pixels right of the visit's age, at scale 1: the side's, and for a second examiner of a day its own. */
  px: number;
  /** The paper behind each mark. */
  paper: string;
  /** `asks`: in the one accent, else in ink. */
  strokes: readonly { name: StrokeName; path: string; asks: boolean }[];
}

export interface LaneMarks {
  id: string;
  sides: readonly SideMarks[];
  /** The paper between the two of a pair, by its place. */
  joints: readonly { px: number; path: string }[];
  /** The spread of the age at each finding. */
  whiskers: readonly string[];
}

const SIDES: readonly Side[] = ['left', 'right', 'midline'];

/**
 * So many visits share a path. A path is painted anew in every tile of the screen it reaches, so one
 * that spans the whole lane costs several times what it shows.
 */
const VISITS_PER_PATH = 4;
/** In a record of very many visits they share more, since each path holds the page up when it is made. */
const MOST_RUNS = 15;

/** The marks in runs of neighbouring visits. */
function runsOf(marks: readonly MarkData[]): MarkData[][] {
  const days = [...new Set(marks.map((mark) => mark.day))].sort((a, b) => a - b);
  const each = Math.max(VISITS_PER_PATH, Math.ceil(days.length / MOST_RUNS));
  const runs: MarkData[][] = [];
  for (let at = 0; at < days.length; at += each) {
    const near = new Set(days.slice(at, at + each));
    runs.push(marks.filter((mark) => near.has(mark.day)));
  }
  return runs;
}

function strokesOfRun(run: readonly MarkData[], unit: number, bare: boolean) {
  return [false, true].flatMap((asks) => {
    const paths = new Map<StrokeName, string>();
    for (const mark of run)
      if (mark.asks === asks)
        for (const name of SHAPES[mark.response]) {
          if (bare && name === 'plate') continue;
          const pen = PEN[name] ?? name;
          paths.set(pen, (paths.get(pen) ?? '') + strokePath(name, mark.day, unit));
        }
    return STROKE_NAMES.flatMap((name) => {
      const path = paths.get(name);
      return path === undefined ? [] : [{ name, path, asks }];
    });
  });
}

/** From one examiner's marks of a day to the next one's, px at scale 1: a pair and a gap. */
const BESIDE_PX = 26;

/** How far each mark of a lane stands from its age, px at scale 1: examiners of one day stand beside each other. */
export function besideOf(marks: readonly MarkData[]): ReadonlyMap<MarkData, number> {
  const byDay = new Map<number, number[]>();
  for (const { day, visit } of marks) {
    const visits = byDay.get(day);
    if (!visits) byDay.set(day, [visit]);
    else if (!visits.includes(visit)) visits.push(visit);
  }
  return new Map(
    marks.map((mark) => {
      const visits = byDay.get(mark.day)!;
      return [mark, (visits.indexOf(mark.visit) - (visits.length - 1) / 2) * BESIDE_PX];
    }),
  );
}

/** The sides of a visit share one age and its spread, so that one line tells of both. */
function whiskersOf(run: readonly MarkData[]): string {
  const lines = run
    .filter((mark) => mark.spreadDays > 0)
    .map(({ day, spreadDays }) => `M${rounded(day - spreadDays)} 0H${rounded(day + spreadDays)}`);
  return [...new Set(lines)].join('');
}

/** The marks of one lane; `unit` scales pixels with the text. Bare ones have no paper behind. */
export function laneMarks(
  id: string,
  marks: readonly MarkData[],
  unit: number,
  bare = false,
): LaneMarks {
  const half = (CAPSULE_PX / 2) * unit;
  const beside = besideOf(marks);
  const places = [...new Set(beside.values())].sort((a, b) => a - b);
  const sides: SideMarks[] = [];
  const joints: { px: number; path: string }[] = [];
  for (const place of places) {
    const here = marks.filter((mark) => beside.get(mark) === place);
    for (const side of SIDES) {
      const own = here.filter((mark) => mark.side === side);
      if (own.length === 0) continue;
      sides.push({
        side,
        px: place + SIDE_PX[side],
        paper: own.map((mark) => `M${rounded(mark.day)} 0h0`).join(''),
        strokes: runsOf(own).flatMap((run) => strokesOfRun(run, unit, bare)),
      });
    }
    const right = new Set(here.filter((m) => m.side === 'right').map((m) => m.day));
    const pairs = here.filter((m) => m.side === 'left' && right.has(m.day));
    if (pairs.length > 0)
      joints.push({
        px: place,
        path: pairs.map(({ day }) => `M${rounded(day)} ${-half}V${half}`).join(''),
      });
  }
  return {
    id,
    sides,
    joints,
    whiskers: runsOf(marks)
      .map(whiskersOf)
      .filter((path) => path !== ''),
  };
}

/** Every place that marks of some lanes are drawn at, px from the age. */
export const placesOf = (marks: readonly LaneMarks[]): number[] => [
  ...new Set(marks.flatMap(({ sides }) => sides.map(({ px }) => px))),
];

/** The marks of every lane that has any. */
export function marksByLane(marks: readonly MarkData[], unit: number, bare = false): LaneMarks[] {
  const byLane = new Map<string, MarkData[]>();
  for (const mark of marks) {
    const own = byLane.get(mark.reflex);
    if (own) own.push(mark);
    else byLane.set(mark.reflex, [mark]);
  }
  return [...byLane].map(([id, own]) => laneMarks(id, own, unit, bare));
}
