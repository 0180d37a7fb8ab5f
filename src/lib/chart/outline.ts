/**
 * Straight and bumped lines through points, as the text of an SVG path. Three commands are all it takes;
 * a library for paths would bring every other one into the first view's script.
 */

export type Point = readonly [x: number, y: number];

/** A number as it is written, to so many digits after the decimal point. */
const written = (digits: number): ((value: number) => number) => {
  const scale = 10 ** digits;
  return (value) => Math.round(value * scale) / scale;
};

/** Straight from point to point; empty where there is none. @param digits after the decimal point */
export function straight(points: readonly Point[], digits: number): string {
  const at = written(digits);
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${at(x)},${at(y)}`).join('');
}

/** From point to point, leaving and reaching each of them level. */
export function bumped(points: readonly Point[], digits: number): string {
  const at = written(digits);
  return points
    .map(([x, y], index) => {
      const before = points[index - 1];
      if (!before) return `M${at(x)},${at(y)}`;
      const middle = at((before[0] + x) / 2);
      return `C${middle},${at(before[1])},${middle},${at(y)},${at(x)},${at(y)}`;
    })
    .join('');
}
