/**
 * Straight and bumped lines through points, as the text of an SVG path. With d3's path alone: its shapes
 * bring every one of their curves into the first view's script.
 */
import { pathRound } from 'd3';

export type Point = readonly [x: number, y: number];

/** Straight from point to point; empty where there is none. @param digits after the decimal point */
export function straight(points: readonly Point[], digits: number): string {
  const path = pathRound(digits);
  points.forEach(([x, y], index) => (index === 0 ? path.moveTo(x, y) : path.lineTo(x, y)));
  return path.toString();
}

/** From point to point, leaving and reaching each of them level. */
export function bumped(points: readonly Point[], digits: number): string {
  const path = pathRound(digits);
  points.forEach(([x, y], index) => {
    const before = points[index - 1];
    const middle = ((before?.[0] ?? x) + x) / 2;
    if (before) path.bezierCurveTo(middle, before[1], middle, y, x, y);
    else path.moveTo(x, y);
  });
  return path.toString();
}
