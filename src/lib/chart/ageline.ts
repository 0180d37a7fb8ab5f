/** The age line and its label, which says the age in every clock and stands clear of every lane. */
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
  /** One or two lines of the label, centred at `labelX`. */
  lines: readonly string[];
  labelX: number;
  labelWidth: number;
}

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
  const lettering = { sizePx: sizes.name, weight: 600 };
  const edge = 8 * sizes.text;
  const room = sizes.width - 2 * edge;
  const lines = wrapParts(words.clocks(day), JOINT, room, lettering, measure);
  const labelWidth = Math.max(...lines.map((text) => measure(text, lettering)));
  const half = spread && day < spread.until ? spread.halfDays * scale.pxPerDay : 0;
  const from = Math.max(x - half, scale.leftPx);
  const to = Math.min(x + half, scale.rightPx);
  return {
    day,
    x,
    seen,
    band: half > 0 && to > from ? { x: from, width: to - from } : null,
    lines,
    labelX: within(x, labelWidth, edge, sizes.width - edge),
    labelWidth,
  };
}
