/**
 * The best-fitting ages of a child over the visits: the age at a visit across, the age its findings fit best
 * upward, one stroke for each interval, and the line on which both ages are equal. Lengths are in the units of
 * its own view box; ages are days of the axis.
 */
import { fromMonths, TERM, toAxisDay, toMonths } from '../../age/axis.ts';
import type { FitKind } from '../../judge/reading/fit.ts';
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
  /** An end that the axis cuts off: drawn a little way from the other end, and without a median. */
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
  /** What each kind is, level with its last interval, and what the line is, at its end. */
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

export const FIT_COURSE = { width: 396, height: 248 } as const;

const LETTERS_PX = 12;
const KINDS: readonly FitKind[] = ['primitive', 'postural', 'milestones'];
/** Around the plot: figures of the ages left and below, what each interval is on the right. */
const EDGE = { left: 34, right: 160, top: 30, bottom: 22 } as const;
/** From the plot down to the figures below it. */
export const BELOW = 18;
/** Between the strokes of one visit. */
const APART = 9;
/** How far an interval without an end is drawn from the end it has. */
const STEM = 14;
/** From the plot to the labels, and from the mark of a kind to its words. */
const BESIDE = 8;
export const AFTER_MARK = 10;
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

/** Labels of one column on a line each: moved down, and up again where that leaves the room. */
function lettered<L extends PlacedText>(labels: readonly L[], lowest: number): L[] {
  const down: L[] = [];
  for (const label of labels.toSorted((a, b) => a.y - b.y))
    down.push({ ...label, y: Math.max(label.y, (down.at(-1)?.y ?? -Infinity) + LINE) });
  const up: L[] = [];
  for (const label of down.toReversed())
    up.unshift({ ...label, y: Math.min(label.y, (up[0]?.y ?? lowest + LINE) - LINE) });
  return up;
}

/** @param visits in the order of time; undefined where none has a best-fitting age that is shown */
export function placeFitCourse(
  visits: readonly FitVisit[],
  words: FitCourseWords,
): PlacedFitCourse | undefined {
  const days = visits.map(({ day }) => day);
  const fits = visits.flatMap((visit) => visit.fits);
  if (fits.length === 0) return undefined;
  const margin = fromMonths(MARGIN_MONTHS) - TERM;
  const across: Span = { from: Math.min(...days) - margin, to: Math.max(...days) + margin };
  const ages = [...days, ...fits.flatMap(({ low, high }) => [low, high])].filter(
    (day) => day !== null,
  );
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
    return visits[at]!.fits.map((fit) => {
      const { kind, median, low, high } = fit;
      const isWhole = low !== null && high !== null;
      return {
        kind,
        x: rounded(x(day) + (sorted.indexOf(fit) - (sorted.length - 1) / 2) * APART),
        top: rounded(high === null ? Math.max(top, y(low ?? median) - STEM) : y(high)),
        bottom: rounded(low === null ? Math.min(bottom, y(high ?? median) + STEM) : y(low)),
        openTop: high === null,
        openBottom: low === null,
        middle: isWhole ? rounded(y(median)) : undefined,
      };
    });
  });
  const kinds = KINDS.map((kind) => ({ kind, own: strokes.filter((one) => one.kind === kind) }));

  const first = Math.max(across.from, up.from);
  const end: readonly [number, number] = [rounded(x(across.to)), rounded(y(across.to))];
  const labels = [
    { of: 'equal' as const, text: words.equal, x: right + BESIDE, y: end[1] + 4 },
    ...kinds.flatMap(({ kind, own }) => {
      // level with its last median, or else with its last interval
      const last = own.findLast(({ middle }) => middle !== undefined) ?? own.at(-1);
      const at = last && (last.middle ?? (last.top + last.bottom) / 2);
      const text = words.kind(kind);
      return at === undefined
        ? []
        : [{ of: kind, text, x: right + BESIDE + AFTER_MARK, y: rounded(at + 4) }];
    }),
  ];
  return {
    captions: [
      { x: right + BESIDE, y: bottom + BELOW, text: words.across },
      { x: 0, y: LETTERS_PX, text: words.up },
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
    labels: lettered(labels, bottom),
  };
}
