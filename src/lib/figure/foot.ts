import type { Ball, Extremity } from './hand.ts';
import { at, cosDeg, mix, sinDeg, type Frame, type Vec } from './space.ts';

/** Toes from the big one outward: root forward and inward, length, thickness, fan in degrees. */
const TOES = [
  { forward: 0.245, inward: 0.058, long: 0.075, thick: 0.05, fan: 30 },
  { forward: 0.25, inward: 0.006, long: 0.06, thick: 0.036, fan: 8 },
  { forward: 0.238, inward: -0.03, long: 0.052, thick: 0.033, fan: -14 },
  { forward: 0.22, inward: -0.06, long: 0.046, thick: 0.031, fan: -36 },
  { forward: 0.195, inward: -0.084, long: 0.04, thick: 0.03, fan: -56 },
] as const;

/**
 * A foot: heel, ball and five toes.
 * @param toes -1 curled down, 0 at ease, 1 raised @param fan 0 together, 1 spread
 */
export function footAt(ankle: Vec, foot: Frame, toes: number, fan: number): Extremity {
  const point = (forward: number, inward: number, soleward: number): Vec =>
    at(ankle, foot, [-inward, -soleward, forward]);
  const ball = (radius: number, ...p: [number, number, number]): Ball => ({
    centre: point(...p),
    radius,
  });
  const pieces: Ball[][] = [
    [ball(0.108, 0, 0, 0), ball(0.095, -0.035, 0, 0.07), ball(0.07, 0.1, 0.02, 0.06)],
    [ball(0.094, -0.035, 0, 0.07), ball(0.066, 0.2, 0.05, 0.1), ball(0.06, 0.17, -0.055, 0.1)],
  ];
  TOES.forEach((toe, i) => {
    // The big toe rises most; curled toes fold down over the ball of the foot.
    const rise = toes > 0 ? toes * (i === 0 ? 52 : 22) : toes * 78;
    const turn = toe.fan * fan;
    const long = toe.long * mix(1, 1.5, fan);
    const root = point(toe.forward - 0.02, toe.inward, 0.105);
    const reach = long * cosDeg(rise);
    const tip = point(
      toe.forward - 0.02 + reach * cosDeg(turn),
      toe.inward + reach * sinDeg(turn),
      0.105 - long * sinDeg(rise),
    );
    pieces.push([
      { centre: root, radius: toe.thick },
      { centre: tip, radius: toe.thick },
    ]);
  });
  return { pieces, seams: [] };
}
