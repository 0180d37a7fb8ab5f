/** Where the chart says what the height of a ridge means: beside one that leaves the room for it. */
import type { Measure } from './labels.ts';
import type { PlacedLanes } from './lanes.ts';
import type { ChartData } from './model.ts';
import { heightAt } from './ridge.ts';
import type { AxisScale } from './scale.ts';
import type { Sizes } from './sizes.ts';

export interface PlacedNote {
  /** The scale from 0 to 1 beside which it is written. */
  x: number;
  base: number;
  ridgePx: number;
}

/** So low a ridge leaves room for letters above it. */
const LOW = 0.1;
/** Only near the top is it read before the ridges are. */
const LANES = 4;

/** Undefined where none of the first lanes leaves room. */
export function placeNote(
  { lanes, child }: ChartData,
  placed: PlacedLanes,
  scale: AxisScale,
  sizes: Sizes,
  text: string,
  measure: Measure,
): PlacedNote | undefined {
  const unit = sizes.text;
  const x = scale.rightPx - measure(text, { sizePx: sizes.small }) - 14 * unit;
  if (x < scale.leftPx || sizes.pitch < 1.5 * sizes.small) return undefined;
  const from = scale.day(x - 24 * unit);
  const to = scale.day(scale.rightPx);
  for (const id of placed.order.slice(0, LANES)) {
    const lane = lanes.find((one) => one.id === id);
    const place = placed.lanes.get(id);
    if (!lane || !place || place.opened) continue;
    const isLow = [from, ...lane.ridge.map((piece) => piece.from)]
      .filter((day) => day >= from && day < to)
      .every((day) => heightAt(lane.ridge, day) <= LOW);
    const isFree = !child?.marks.some(({ reflex, day }) => reflex === id && day > from);
    if (isLow && isFree) return { x, base: place.base, ridgePx: place.ridgePx };
  }
  return undefined;
}
