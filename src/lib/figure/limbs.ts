/** Arms and legs: an upper piece, a lower piece with hand or foot, and the joint where they are one. */
import { levelAt, type ArmPlace, type LegPlace } from './body.ts';
import { footAt } from './foot.ts';
import { handAt } from './hand.ts';
import { bandPath, blobBandPath, linePath } from './outline.ts';
import { blobOf, onPage, type Blob } from './page.ts';
import { tone, wayOf, type Shape } from './paint.ts';
import {
  bonePath,
  disc,
  limbRun,
  limbTone,
  patch,
  piecesPath,
  solid,
  type Pen,
  type Placed,
} from './pen.ts';
import { BONE, FLESH } from './skeleton.ts';
import { at, between, length, sub, times, type Vec } from './space.ts';

export type Side = 'L' | 'R';

/** How far back along a bone the line of its neighbour is rubbed out. */
const JOINT = 0.24;
/** Where along the thigh a nappy's leg ends. */
const CUFF = 0.3;
const CUFF_RADIUS = 0.246;

/** Two pieces in the order they lie, the joint patched on the nearer one. */
function jointed(
  upper: { depth: number; shape: Shape },
  lower: { depth: number; shape: Shape },
  lowerInFront: boolean,
  joint: Shape,
  onLower: readonly Shape[],
): { upper: Placed; lower: Placed } {
  const nearer = (a: number, b: number): number => Math.max(a, b + 0.001);
  return lowerInFront
    ? {
        upper: { depth: upper.depth, shapes: [upper.shape] },
        lower: {
          depth: nearer(lower.depth, upper.depth),
          shapes: [lower.shape, joint, ...onLower],
        },
      }
    : {
        upper: { depth: nearer(upper.depth, lower.depth), shapes: [upper.shape, joint] },
        lower: { depth: lower.depth, shapes: [lower.shape, ...onLower] },
      };
}

/** An arm. @param far in the shade of the body */
export function armLayers(pen: Pen, side: Side, far: boolean): { upper: Placed; lower: Placed } {
  const a: ArmPlace = pen.body[`arm${side}`];
  const j = pen.joints[`arm${side}`];
  const tint = pen.tints[`arm${side}`];
  const hand = handAt(a.wrist, a.hand, j.grip, j.spread);
  const upperDepth = between(a.shoulder, a.elbow, 0.5)[2];
  const lowerDepth = between(a.elbow, a.wrist, 0.6)[2];
  const lowerInFront = lowerDepth >= upperDepth - 0.08;
  const seams: Shape[] = pen.manner.plain
    ? []
    : hand.seams.map((seam) => ({
        name: `knuckle-${side}`,
        d: linePath(seam.map((v) => onPage(pen.page, v))),
        line: 'line',
        width: pen.manner.line * 0.55,
      }));
  const joint = patch(
    `elbow-${side}`,
    bandPath([
      disc(pen, a.elbow, FLESH.upperArm[2]),
      disc(pen, between(a.elbow, lowerInFront ? a.shoulder : a.wrist, JOINT), 0.138),
    ]),
    limbTone(far, tint),
  );
  const upper = solid(
    pen,
    `upper-arm-${side}`,
    bonePath(pen, a.shoulder, a.elbow, FLESH.upperArm),
    limbRun(pen, a.shoulder, a.elbow, far, tint),
  );
  const lower = solid(
    pen,
    `forearm-${side}`,
    bonePath(pen, a.elbow, a.wrist, FLESH.forearm) + piecesPath(pen, hand),
    limbTone(far, tint),
  );
  return jointed(
    { depth: upperDepth, shape: upper },
    { depth: lowerDepth, shape: lower },
    lowerInFront,
    joint,
    seams,
  );
}

/** Where an arm grows out of the chest, the line between them is rubbed out towards the breastbone. */
export function shoulderPatch(pen: Pen, side: Side): Shape {
  const { shoulder } = pen.body[`arm${side}`];
  const level = levelAt(pen.body.levels, 0.78);
  const inner = at(level.centre, level.frame, [side === 'L' ? 0.2 : -0.2, 0, 0]);
  const r = FLESH.upperArm[0];
  const d = bandPath([disc(pen, shoulder, r), disc(pen, inner, r)]);
  const own = tone('skin', 'limb', pen.tints.trunk * 0.8);
  const way = wayOf(onPage(pen.page, inner), onPage(pen.page, between(inner, shoulder, 1.25)));
  return patch(
    `shoulder-${side}`,
    d,
    pen.tints.trunk > 0.01 ? { from: own, to: tone('skin'), ...way } : own,
  );
}

const ballAxes = (r: number): Vec[] => [
  [r, 0, 0],
  [0, r, 0],
  [0, 0, r],
];

/** A ring round the thigh: seen on edge it is a line, and it opens as the thigh turns to the viewer. */
function rim(pen: Pen, l: LegPlace, radius: number): Blob {
  const axis = times(sub(l.knee, l.hip), 1 / BONE.thigh);
  const aside: Vec = Math.abs(axis[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0];
  const cross = (a: Vec, b: Vec): Vec => [
    a[1] * b[2] - a[2] * b[1],
    a[2] * b[0] - a[0] * b[2],
    a[0] * b[1] - a[1] * b[0],
  ];
  const across = cross(axis, aside);
  const u = times(across, radius / (length(across) || 1));
  return blobOf(pen.page, between(l.hip, l.knee, CUFF), [u, cross(axis, u)]);
}

export interface LegLayers {
  readonly upper: Placed;
  readonly lower: Placed;
  /** The nappy's leg. */
  readonly cuff: string;
  /** The thigh comes at the viewer, so it lies over the nappy's leg instead of under it. */
  readonly coming: boolean;
}

/** A leg. @param far in the shade of the body */
export function legLayers(pen: Pen, side: Side, far: boolean): LegLayers {
  const l: LegPlace = pen.body[`leg${side}`];
  const j = pen.joints[`leg${side}`];
  const tint = pen.tints[`leg${side}`];
  const foot = footAt(l.ankle, l.foot, j.toes, j.fan);
  const coming = l.knee[2] >= l.hip[2];
  const ball = (v: Vec, r: number): Blob => blobOf(pen.page, v, ballAxes(r));
  const thigh = coming
    ? blobBandPath([
        rim(pen, l, CUFF_RADIUS),
        ball(between(l.hip, l.knee, 0.5), 0.212),
        ball(l.knee, FLESH.thigh[2]),
      ])
    : bonePath(pen, l.hip, l.knee, FLESH.thigh);
  const upperDepth = between(l.hip, l.knee, 0.55)[2];
  const lowerDepth = between(l.knee, l.ankle, 0.5)[2];
  const lowerInFront = lowerDepth >= upperDepth - 0.05;
  const joint = patch(
    `knee-${side}`,
    bandPath([
      disc(pen, l.knee, FLESH.thigh[2]),
      disc(
        pen,
        between(l.knee, lowerInFront ? l.hip : l.ankle, JOINT),
        lowerInFront ? 0.186 : 0.174,
      ),
    ]),
    limbTone(far, tint),
  );
  const upper = solid(pen, `thigh-${side}`, thigh, limbRun(pen, l.hip, l.knee, far, tint));
  const lower = solid(
    pen,
    `shank-${side}`,
    bonePath(pen, l.knee, l.ankle, FLESH.shank) + piecesPath(pen, foot),
    limbTone(far, tint),
  );
  return {
    cuff: blobBandPath([ball(l.hip, 0.19), rim(pen, l, CUFF_RADIUS)]),
    coming,
    ...jointed(
      { depth: upperDepth, shape: upper },
      { depth: lowerDepth, shape: lower },
      lowerInFront,
      joint,
      [],
    ),
  };
}
