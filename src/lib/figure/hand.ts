import { at, clamp, cosDeg, sinDeg, type Frame, type Vec } from './space.ts';

/** A ball of flesh in space; a rubber band round two or three of them is a piece of a limb. */
export interface Ball {
  readonly centre: Vec;
  /** Head heights. */
  readonly radius: number;
}

/** A hand or foot in space: pieces to be drawn as one, and the lines where pieces meet. */
export interface Extremity {
  readonly pieces: readonly (readonly Ball[])[];
  readonly seams: readonly (readonly Vec[])[];
}

/** Fingers from the index to the little one: root forward and thumbward, length, thickness, fan. */
const FINGERS = [
  { forward: 0.185, across: 0.072, long: 0.165, thick: 0.043, fan: 15 },
  { forward: 0.2, across: 0.026, long: 0.185, thick: 0.044, fan: 3 },
  { forward: 0.195, across: -0.02, long: 0.17, thick: 0.042, fan: -9 },
  { forward: 0.172, across: -0.064, long: 0.135, thick: 0.038, fan: -24 },
] as const;

const LINKS = [0.42, 0.32, 0.26] as const;
/** How far each link bends in a fist, in degrees. */
const CURL = [78, 98, 62] as const;
/** A hand at ease still bends a little and closes its fan. */
const FIST_FROM = 0.6;
/** Fingers less spread than this lie side by side, with a line between them. */
const TOGETHER = 0.15;

/**
 * A hand: palm, four fingers of three links and a thumb of two.
 * @param grip 0 open flat to 1 fist, for all fingers or from the index on @param spread 0 fingers together to 1 fanned
 */
export function handAt(
  wrist: Vec,
  hand: Frame,
  grip: number | readonly number[],
  spread: number,
): Extremity {
  const gripOf = (finger: number): number =>
    typeof grip === 'number' ? grip : (grip[finger] ?? 0);
  const point = (forward: number, across: number, palmward: number): Vec =>
    at(wrist, hand, [-palmward, -forward, across]);
  const ball = (radius: number, ...p: [number, number, number]): Ball => ({
    centre: point(...p),
    radius,
  });
  const palm = [
    ball(0.088, 0.01, 0, 0),
    ball(0.066, 0.15, 0.05, 0),
    ball(0.058, 0.145, -0.045, 0.005),
    ball(0.075, 0.07, 0.035, 0.01),
  ];
  const pieces: Ball[][] = [palm];
  const chains = FINGERS.map((finger, index) => {
    const grip = gripOf(index);
    let [f, n] = [finger.forward - 0.02, 0];
    let bend = 6;
    const fan = finger.fan * spread * (1 - grip);
    const tips: Vec[] = [point(f, finger.across, n)];
    let along = 0;
    LINKS.forEach((share, i) => {
      bend += (CURL[i] ?? 0) * grip;
      const step = finger.long * share;
      along += step * cosDeg(bend);
      n += step * sinDeg(bend);
      f = finger.forward - 0.02 + along * cosDeg(fan);
      tips.push(point(f, finger.across + along * sinDeg(fan), n));
    });
    return { tips, thick: finger.thick };
  });
  for (const { tips, thick } of chains)
    for (let i = 0; i < 3; i++) {
      const [a, b] = [tips[i], tips[i + 1]];
      if (a && b)
        pieces.push([
          { centre: a, radius: thick },
          { centre: b, radius: thick * (i === 2 ? 0.92 : 0.98) },
        ]);
    }
  pieces.push(...thumb(point, gripOf(2), spread));
  const fingers = chains.map((c) => c.tips);
  const seams =
    gripOf(3) > FIST_FROM ? seamsOf(fingers, 1) : spread < TOGETHER ? seamsOf(fingers, 0) : [];
  const alike = seams.filter((_, i) => Math.abs(gripOf(i) - gripOf(i + 1)) < 0.3);
  return { pieces, seams: alike };
}

function thumb(
  point: (f: number, t: number, n: number) => Vec,
  grip: number,
  spread: number,
): Ball[][] {
  // Open, the thumb stands off the palm; closed, it lies across the bent fingers.
  const off = (32 + 26 * spread) * (1 - grip) + 4 * grip;
  const inward = 64 * clamp(grip * 1.15 - 0.1, 0, 1);
  const root: [number, number, number] = [0.06, 0.075, 0.03];
  const one = 0.1;
  const two = 0.085;
  const mid: [number, number, number] = [
    root[0] + one * cosDeg(off),
    root[1] + one * sinDeg(off),
    root[2] + one * 0.9 * sinDeg(inward),
  ];
  const swing = off - 8 - 78 * grip;
  const tip: [number, number, number] = [
    mid[0] + two * cosDeg(swing) * (1 - 0.5 * grip),
    mid[1] + two * sinDeg(swing),
    mid[2] + two * 0.5 * sinDeg(inward),
  ];
  const balls = [
    { centre: point(...root), radius: 0.056 },
    { centre: point(...mid), radius: 0.048 },
    { centre: point(...tip), radius: 0.042 },
  ];
  return [balls.slice(0, 2), balls.slice(1)];
}

/** Lines between neighbouring fingers, from the root (0) or the bent knuckle (1) to the last link. */
function seamsOf(chains: readonly (readonly Vec[])[], from: 0 | 1): Vec[][] {
  const seams: Vec[][] = [];
  chains.forEach((tips, i) => {
    const next = chains[i + 1];
    if (!next) return;
    const seam: Vec[] = [];
    for (const k of [0, 1, 2].slice(from)) {
      const [a, b] = [tips[k], next[k]];
      if (a && b) seam.push([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2]);
    }
    seams.push(seam);
  });
  return seams;
}
