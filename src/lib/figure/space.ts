/** Vectors and turns in space: x to the right of the page, y up, z towards the viewer. */

export type Vec = readonly [x: number, y: number, z: number];

/** A frame: the three axes of a body part, as they stand in space. May be left-handed. */
export interface Frame {
  readonly x: Vec;
  readonly y: Vec;
  readonly z: Vec;
}

export const UPRIGHT: Frame = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };

const RADIANS = Math.PI / 180;

export const sinDeg = (degrees: number): number => Math.sin(degrees * RADIANS);
export const cosDeg = (degrees: number): number => Math.cos(degrees * RADIANS);
export const mix = (a: number, b: number, share: number): number => a + (b - a) * share;
export const clamp = (value: number, low: number, high: number): number =>
  Math.min(high, Math.max(low, value));

export const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Vec, k: number): Vec => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const length = (a: Vec): number => Math.hypot(a[0], a[1], a[2]);
export const between = (a: Vec, b: Vec, share: number): Vec => [
  mix(a[0], b[0], share),
  mix(a[1], b[1], share),
  mix(a[2], b[2], share),
];

/** A vector given in the axes of a frame, as it stands in space. */
export const inFrame = (f: Frame, v: Vec): Vec => [
  f.x[0] * v[0] + f.y[0] * v[1] + f.z[0] * v[2],
  f.x[1] * v[0] + f.y[1] * v[1] + f.z[1] * v[2],
  f.x[2] * v[0] + f.y[2] * v[1] + f.z[2] * v[2],
];

/** A point of a body part, `v` from its origin in its own axes. */
export const at = (origin: Vec, f: Frame, v: Vec): Vec => add(origin, inFrame(f, v));

export type Axis = 'x' | 'y' | 'z';

/** A frame turned about one of its own axes. @param degrees counter-clockwise seen from the axis' tip */
export function turned(f: Frame, axis: Axis, degrees: number): Frame {
  const s = sinDeg(degrees);
  const c = cosDeg(degrees);
  const pair = (a: Vec, b: Vec): [Vec, Vec] => [
    add(times(a, c), times(b, s)),
    add(times(b, c), times(a, -s)),
  ];
  if (axis === 'x') {
    const [y, z] = pair(f.y, f.z);
    return { x: f.x, y, z };
  }
  if (axis === 'y') {
    const [z, x] = pair(f.z, f.x);
    return { x, y: f.y, z };
  }
  const [x, y] = pair(f.x, f.y);
  return { x, y, z: f.z };
}

/** The frame seen in a mirror that stands on its own yz plane: a right limb from a left one. */
export const reflected = (f: Frame): Frame => ({ x: times(f.x, -1), y: f.y, z: f.z });
