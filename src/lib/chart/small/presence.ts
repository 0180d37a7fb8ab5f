/**
 * How likely a response is present in a child over the axis, as inferred from the sources and all visits: a
 * small area, with what was found at the visits on it. Lengths are in the units of its own view box.
 */
import { fromGestationWeeks, fromMonths, TERM, toAxisDay, toMonths } from '../../age/axis.ts';
import type { Response } from '../../case/finding.ts';
import type { Inferred } from '../../judge/reading/course.ts';
import { besideOf, SIDE_PX } from '../marks.ts';
import type { MarkData } from '../model.ts';
import { axisScale } from '../scale.ts';

export interface PlacedPresence {
  left: number;
  right: number;
  /** Where the probability is 1, and where it is 0. */
  top: number;
  bottom: number;
  area: string;
  line: string;
  term: number;
  /** The age at the visit that is shown. */
  now: number;
  ticks: readonly { at: number; text: string }[];
  /** Marks at the age of their visit, left of it the left side, at mid-height. */
  marks: readonly { x: number; response: Response }[];
}

export const PRESENCE = { width: 340, height: 92 } as const;
const EDGE = { left: 40, right: 8, top: 10, bottom: 22 } as const;
/** From one place at which the probability is worked out to the next, days. */
const STEP_DAYS = 5;
/** Of the axis before the first finding and after the visit that is shown, months. */
const BEFORE_MONTHS = 1;
const AFTER_MONTHS = 6;
/** Between two figures, months, where there are at most so many months. */
const STEPS: readonly (readonly [upTo: number, step: number])[] = [
  [9, 1],
  [18, 2],
  [Infinity, 6],
];

const rounded = (value: number): number => Math.round(value * 10) / 10;

/**
 * @param course of the reflex as a whole, of which the sources date both events
 * @param marks its findings, on the clock of the course @param now the day of the visit that is shown
 */
export function placePresence(
  course: Pick<Inferred, 'states'>,
  marks: readonly MarkData[],
  now: number,
  term: string,
): PlacedPresence {
  const first = Math.min(TERM, now, ...marks.map(({ day }) => day));
  const last = Math.max(now, ...marks.map(({ day }) => day));
  const range = {
    from: toAxisDay(Math.max(fromGestationWeeks(20), first - (fromMonths(BEFORE_MONTHS) - TERM))),
    to: toAxisDay(last + (fromMonths(AFTER_MONTHS) - TERM)),
  };
  const [left, right] = [EDGE.left, PRESENCE.width - EDGE.right];
  const [top, bottom] = [EDGE.top, PRESENCE.height - EDGE.bottom];
  const scale = axisScale(range, left, right);
  const steps = Math.ceil((range.to - range.from) / STEP_DAYS);
  const points = Array.from({ length: steps + 1 }, (_, step) => {
    const day = range.from + ((range.to - range.from) * step) / steps;
    const { there } = course.states(day);
    return `${rounded(scale.x(day))} ${rounded(bottom - there * (bottom - top))}`;
  });
  const line = `M${points.join('L')}`;
  const months = toMonths(range.to);
  const step = STEPS.find(([upTo]) => months <= upTo)![1];
  const figures = Array.from({ length: Math.floor(months / step) + 1 }, (_, k) => k * step);
  const beside = besideOf(marks);
  return {
    left,
    right,
    top,
    bottom,
    area: `${line}L${right} ${bottom}L${left} ${bottom}Z`,
    line,
    term: rounded(scale.x(TERM)),
    now: rounded(scale.x(now)),
    ticks: figures.map((month) => ({
      at: rounded(scale.x(fromMonths(month))),
      text: month === 0 ? term : `${month}`,
    })),
    marks: marks.map((mark) => ({
      x: rounded(scale.x(mark.day) + beside.get(mark)! + SIDE_PX[mark.side]),
      response: mark.response,
    })),
  };
}
