/** The age marker: its label on the axis says the age that counts, a line below every lane the other clocks. */
import type { AxisDay } from '../age/axis.ts';
import { within, wrapParts, type Measure } from './labels.ts';
import type { Spread } from './model.ts';
import type { AxisScale } from './scale.ts';
import type { Sizes } from './sizes.ts';
import type { ChartWords } from './words.ts';

export interface PlacedAge {
  day: AxisDay;
  x: number;
  /** Whether the line is in sight. */
  seen: boolean;
  /** The spread of the age: left edge and width; null where the age is exact. */
  band: { x: number; width: number } | null;
  /** The age in every clock, the one that counts first. */
  clocks: readonly string[];
  /** The label on the axis: the clock that counts, centred at `x`. */
  label: { text: string; x: number; width: number };
  /** The other clocks, in one or two lines centred at `restX`. */
  rest: readonly string[];
  restX: number;
}

/** The size of the label's letters at scale 1, px. */
export const LABEL = 12.5;

/** Between the clocks. */
export const JOINT = '  ·  ';

export function placeAge(
  day: AxisDay,
  spread: Spread | null,
  scale: AxisScale,
  sizes: Sizes,
  words: ChartWords,
  measure: Measure,
): PlacedAge {
  const x = scale.x(day);
  const seen = x >= scale.leftPx - 0.5 && x <= scale.rightPx + 0.5;
  const lettering = { sizePx: LABEL * sizes.text, weight: 600 };
  const small = { sizePx: sizes.small };
  const edge = 8 * sizes.text;
  const clocks = words.clocks(day);
  const [text = '', ...others] = clocks;
  const width = measure(text, lettering) + 20 * sizes.text;
  const rest = wrapParts(others, JOINT, sizes.width - 2 * edge, small, measure);
  const restWidth = Math.max(0, ...rest.map((line) => measure(line, small)));
  const half = spread && day < spread.until ? spread.halfDays * scale.pxPerDay : 0;
  const from = Math.max(x - half, scale.leftPx);
  const to = Math.min(x + half, scale.rightPx);
  return {
    day,
    x,
    seen,
    band: half > 0 && to > from ? { x: from, width: to - from } : null,
    clocks,
    label: { text, x: within(x, width, 2, sizes.width - 2), width },
    rest,
    restX: within(x, restWidth, edge, sizes.width - edge),
  };
}
