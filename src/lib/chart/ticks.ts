/** Ticks: weeks of gestation before term, months after, term itself apart. */
import {
  DAYS_PER_MONTH,
  DAYS_PER_WEEK,
  fromGestationWeeks,
  fromMonths,
  TERM,
  type AxisDay,
} from '../age/axis.ts';
import { keepApart, type Lettering, type Measure } from './labels.ts';
import type { AxisScale } from './scale.ts';

export type TickUnit = 'week' | 'month';

export interface TickAge {
  unit: TickUnit;
  /** Weeks of gestation, or months after term. */
  value: number;
}

export interface Tick extends TickAge {
  day: AxisDay;
  x: number;
  /** Empty for a tick without a figure. */
  label: string;
  width: number;
}

/** Steps between figures, least first. */
const WEEK_STEPS = [1, 2, 4, 8, 16];
const MONTH_STEPS = [1, 2, 3, 6, 12, 24];

/** Ticks without figures stand at least this far apart. */
const MINOR_PX = 7;

const place = (age: TickAge): AxisDay =>
  age.unit === 'week' ? fromGestationWeeks(age.value) : fromMonths(age.value);

/** Multiples of a step in sight, term left out. */
function multiples(unit: TickUnit, step: number, scale: AxisScale): TickAge[] {
  const { from, to } = scale.range;
  const days = unit === 'week' ? DAYS_PER_WEEK : DAYS_PER_MONTH;
  const zero = unit === 'week' ? 0 : TERM;
  const first = unit === 'week' ? from : Math.max(from, TERM);
  const last = unit === 'week' ? Math.min(to, TERM) : to;
  const ages: TickAge[] = [];
  for (let n = Math.ceil((first - zero) / days / step - 1e-9); ; n++) {
    const age: TickAge = { unit, value: n * step };
    const day = place(age);
    if (day > last + 1e-6) break;
    if (Math.abs(day - TERM) > 1) ages.push(age);
  }
  return ages;
}

export interface TickWords {
  /** The figure at a tick. */
  tick(age: TickAge): string;
}

interface Side {
  unit: TickUnit;
  steps: readonly number[];
  /** The step that is used where there is room for less. */
  least: number;
}

const SIDES: readonly Side[] = [
  { unit: 'week', steps: WEEK_STEPS, least: 4 },
  { unit: 'month', steps: MONTH_STEPS, least: 2 },
];

/** From this many pixels a day on the finest steps are used: closer in than any first view. */
const CLOSE_PX_PER_DAY = 5;

function figuresOf(
  side: Side,
  scale: AxisScale,
  lettering: Lettering,
  words: TickWords,
  measure: Measure,
): { step: number; ticks: Tick[] } {
  const close = scale.pxPerDay >= CLOSE_PX_PER_DAY;
  const usable = side.steps.filter((step) => close || step >= side.least);
  // a stretch too short for the usual steps has the widest of the finer ones that falls into it
  const finer = side.steps.filter((step) => !usable.includes(step)).toReversed();
  for (const step of [...usable, ...finer]) {
    const ticks = multiples(side.unit, step, scale).map((age): Tick => {
      const day = place(age);
      const label = words.tick(age);
      return { ...age, day, x: scale.x(day), label, width: measure(label, lettering) };
    });
    // the figure nearest term must leave it free on both sides, and none may leave the chart
    const apart = keepApart(ticks, lettering.sizePx * 0.6);
    if (apart && ticks.length > 0) return { step, ticks };
  }
  return { step: side.steps.at(-1) ?? 1, ticks: [] };
}

/**
 * All ticks in sight in ascending order: figures as dense as they can stand, then plain ticks at the
 * next finer steps that leave room. Where there is none, plain ticks go, not figures.
 * @param edgePx the chart's own edges, which no figure may cross
 */
export function ticksIn(
  scale: AxisScale,
  lettering: Lettering,
  words: TickWords,
  measure: Measure,
  edgePx: readonly [number, number],
): Tick[] {
  const all = SIDES.flatMap((side) => {
    const { step, ticks } = figuresOf(side, scale, lettering, words, measure);
    const days = side.unit === 'week' ? DAYS_PER_WEEK : DAYS_PER_MONTH;
    const finer = side.steps.find((s) => s < step && s * days * scale.pxPerDay >= MINOR_PX);
    const figured = new Set(ticks.map((tick) => tick.value));
    const plain = finer === undefined ? [] : multiples(side.unit, finer, scale);
    return [
      ...ticks,
      ...plain
        .filter((age) => !figured.has(age.value))
        .map((age): Tick => {
          const day = place(age);
          return { ...age, day, x: scale.x(day), label: '', width: 0 };
        }),
    ];
  }).sort((a, b) => a.day - b.day);
  let end = -Infinity;
  return all.map((tick) => {
    if (tick.label === '') return tick;
    const from = tick.x - tick.width / 2;
    const to = tick.x + tick.width / 2;
    if (from < edgePx[0] || to > edgePx[1] || from < end) return { ...tick, label: '', width: 0 };
    end = to + lettering.sizePx * 0.4;
    return tick;
  });
}
