/** Axis days to pixels: a straight line, for which a scale library would bring colours and formats along. */
import { toAxisDay, type AxisDay } from '../age/axis.ts';
import type { Stretch } from './model.ts';

export interface AxisScale {
  range: Stretch;
  /** Pixels from the left edge of the chart to the two ends of the plot. */
  leftPx: number;
  rightPx: number;
  pxPerDay: number;
  /** A day's place in pixels from the left edge of the chart. */
  x(day: number): number;
  /** The day at a place. */
  day(x: number): AxisDay;
}

export function axisScale(range: Stretch, leftPx: number, rightPx: number): AxisScale {
  const pxPerDay = (rightPx - leftPx) / (range.to - range.from);
  return {
    range,
    leftPx,
    rightPx,
    pxPerDay,
    x: (day) => leftPx + (day - range.from) * pxPerDay,
    day: (x) => toAxisDay(range.from + (x - leftPx) / pxPerDay),
  };
}

/**
 * The transform that lays geometry kept in axis days onto the plot. All that stays in days stands
 * under one of these, so that a zoom changes a few attributes and no path.
 */
export const matrixOf = (scale: AxisScale, shiftPx = 0): string =>
  `matrix(${scale.pxPerDay} 0 0 1 ${scale.leftPx - scale.range.from * scale.pxPerDay + shiftPx} 0)`;
