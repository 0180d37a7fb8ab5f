/**
 * The best-fitting ages of a child over the visits: the age at a visit across, the age its findings fit best
 * upward, one stroke for each interval, and the line on which both ages are equal. Lengths are in the units of
 * its own view box; ages are days of the axis.
 */
import { fromMonths, TERM, toAxisDay, toMonths } from '../../age/axis.ts';
import type { FitKind } from '../../judge/reading/fit.ts';
import { roughMeasure, type Lettering, type Measure } from '../labels.ts';
import type { FitData } from '../model.ts';

/** A visit, at the child's age on it, and the best-fitting ages that are shown for it. */
export interface FitVisit {
  day: number;
  fits: readonly FitData[];
}

export interface FitStroke {
  kind: FitKind;
  x: number;
  /** The ends of the interval, the later age first: y grows downward. */
  top: number;
  bottom: number;
  /** An end that the axis cuts off: the interval is open there, and the median is not shown. */
  openTop: boolean;
  openBottom: boolean;
  /** The median; undefined where an end is open. */
  middle: number | undefined;
}

export interface PlacedText {
  x: number;
  y: number;
  text: string;
}

export interface FitTick {
  at: number;
  text: string;
}

export interface PlacedFitCourse {
  left: number;
  right: number;
  top: number;
  bottom: number;
  /** The age at each visit, on the axis across. */
  visits: readonly number[];
  across: readonly FitTick[];
  up: readonly FitTick[];
  /** Where both ages are equal. */
  equal: string;
  strokes: readonly FitStroke[];
  /** Through the medians of one kind; empty with fewer than two. */
  lines: readonly { kind: FitKind; path: string }[];
  /** What is counted across and upward, at the ends of the two axes. */
  captions: readonly [across: PlacedText, up: PlacedText];
  /** What each kind is, beside its last interval, and what the line is, at its end. */
  labels: readonly (PlacedText & { of: FitKind | 'equal' })[];
}

export interface FitCourseWords {
  kind: (kind: FitKind) => string;
  equal: string;
  term: string;
  /** What is counted across and upward. */
  across: string;
  up: string;
}

export const FIT_COURSE = { width: 352, height: 248 } as const;

const LETTERS: Lettering = { sizePx: 12 };
const KINDS: readonly FitKind[] = ['primitive', 'postural', 'milestones'];
/** Around the plot: figures of the ages left and below, what each interval is on the right. */
const EDGE = { left: 34, right: 116, top: 30, bottom: 22 } as const;
/** From the plot down to the figures below it. */
export const BELOW = 18;
/** Between the strokes of one visit. */
const APART = 9;
/** Between the lines of two labels. */
const LINE = 15;
/** Of the axis before the first and after the last visit, in months. */
const MARGIN_MONTHS = 0.7;
/** As many figures as an axis has at most, with the steps between them in months. */
const MOST_TICKS = 8;
const STEPS = [1, 2, 3, 6, 12];

const rounded = (value: number): number => Math.round(value * 10) / 10;

interface Span {
  from: number;
  to: number;
}

/** Whole months from term on within a span of days. */
function ticksOf({ from, to }: Span, at: (day: number) => number, term: string): FitTick[] {
  const [first, last] = [Math.max(0, toMonths(toAxisDay(from))), toMonths(toAxisDay(to))];
  const step = STEPS.find((one) => (last - first) / one < MOST_TICKS) ?? STEPS.at(-1)!;
  const ticks: FitTick[] = [];
  for (let month = Math.ceil(first / step) * step; month <= last; month += step)
    ticks.push({ at: rounded(at(fromMonths(month))), text: month === 0 ? term : `${month}` });
  return ticks;
}

/** Labels that share a place across keep a line each: moved down, and up again where that leaves the room. */
function lettered<L extends PlacedText>(
  labels: readonly L[],
  lowest: number,
  measure: Measure,
): L[] {
  const widthOf = ({ text }: L): number => measure(text, LETTERS);
  const meets = (one: L, other: L): boolean =>
    one.x < other.x + widthOf(other) && other.x < one.x + widthOf(one);
  const down: L[] = [];
  for (const label of labels.toSorted((a, b) => a.y - b.y)) {
    const above = down.filter((one) => meets(one, label)).map(({ y }) => y + LINE);
    down.push({ ...label, y: Math.max(label.y, ...above) });
  }
  const up: L[] = [];
  for (const label of down.toSorted((a, b) => b.y - a.y)) {
    const below = up.filter((one) => meets(one, label)).map(({ y }) => y - LINE);
    up.push({ ...label, y: Math.min(label.y, lowest, ...below) });
  }
  return up;
}

/** @param visits in the order of time; undefined where none has a best-fitting age that is shown */
export function placeFitCourse(
  visits: readonly FitVisit[],
  words: FitCourseWords,
  measure: Measure = roughMeasure,
): PlacedFitCourse | undefined {
  const days = visits.map(({ day }) => day);
  const fits = visits.flatMap((visit) => visit.fits);
  if (fits.length === 0) return undefined;
  const margin = fromMonths(MARGIN_MONTHS) - TERM;
  const across: Span = { from: Math.min(...days) - margin, to: Math.max(...days) + margin };
  const ages = [...days, ...fits.flatMap(({ low, high }) => [low, high])].filter(
    (day) => day !== null,
  );
  // an interval without an end runs on to the edge: there has to be some way beyond the other end
  const up: Span = {
    from: Math.min(TERM, ...ages),
    to: Math.max(across.to, ...ages.map((day) => day + margin)),
  };
  const [left, right] = [EDGE.left, FIT_COURSE.width - EDGE.right];
  const [top, bottom] = [EDGE.top, FIT_COURSE.height - EDGE.bottom];
  const x = (day: number): number =>
    left + ((day - across.from) / (across.to - across.from)) * (right - left);
  const y = (day: number): number =>
    bottom - ((day - up.from) / (up.to - up.from)) * (bottom - top);

  const strokes = visits.flatMap(({ day }, at): FitStroke[] => {
    // two examiners of one day beside each other too
    const here = visits.flatMap((visit) => (visit.day === day ? visit.fits : []));
    const sorted = here.toSorted((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind));
    return visits[at]!.fits.map((fit) => ({
      kind: fit.kind,
      x: rounded(x(day) + (sorted.indexOf(fit) - (sorted.length - 1) / 2) * APART),
      top: rounded(fit.high === null ? top : y(fit.high)),
      bottom: rounded(fit.low === null ? bottom : y(fit.low)),
      openTop: fit.high === null,
      openBottom: fit.low === null,
      middle: fit.low === null || fit.high === null ? undefined : rounded(y(fit.median)),
    }));
  });
  const kinds = KINDS.map((kind) => ({ kind, own: strokes.filter((one) => one.kind === kind) }));

  const first = Math.max(across.from, up.from);
  const end: readonly [number, number] = [rounded(x(across.to)), rounded(y(across.to))];
  const beside = (of: FitKind | 'equal', text: string, fromX: number, atY: number) => {
    const most = FIT_COURSE.width - measure(text, LETTERS);
    return { of, text, x: rounded(Math.min(fromX + 8, most)), y: rounded(atY) };
  };
  const labels = [
    beside('equal', words.equal, end[0], end[1] - 8),
    ...kinds.flatMap(({ kind, own }) => {
      const last = own.at(-1);
      return last
        ? [
            beside(
              kind,
              words.kind(kind),
              last.x,
              (last.middle ?? (last.top + last.bottom) / 2) + 4,
            ),
          ]
        : [];
    }),
  ];
  return {
    captions: [
      { x: right + 8, y: bottom + BELOW, text: words.across },
      { x: 0, y: LETTERS.sizePx, text: words.up },
    ],
    left,
    right,
    top,
    bottom,
    visits: [...new Set(days)].map((day) => rounded(x(day))),
    across: ticksOf(across, x, words.term),
    up: ticksOf(up, y, words.term),
    equal: `M${rounded(x(first))} ${rounded(y(first))}L${end[0]} ${end[1]}`,
    strokes,
    lines: kinds.flatMap(({ kind, own }) => {
      const dots = own.filter(({ middle }) => middle !== undefined);
      const path = dots.map((one, k) => `${k === 0 ? 'M' : 'L'}${one.x} ${one.middle}`).join('');
      return dots.length > 1 ? [{ kind, path }] : [];
    }),
    labels: lettered(labels, bottom, measure),
  };
}
