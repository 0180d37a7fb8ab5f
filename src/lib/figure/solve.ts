/** Contact is solved, never typed: the body is lowered onto what it rests on, and limbs reach for it. */
import { bodyOf, levelAt, type Body } from './body.ts';
import { footAt } from './foot.ts';
import { handAt, type Ball } from './hand.ts';
import { headBalls } from './head.ts';
import type { Joints } from './joints.ts';
import { FLESH } from './skeleton.ts';
import { clamp, cosDeg, dot, sinDeg, times, type Vec } from './space.ts';
import { girth } from './trunk.ts';

/** All that may touch, as balls, by part of the body. */
export interface Contacts {
  readonly trunk: readonly Ball[];
  readonly seat: readonly Ball[];
  readonly head: readonly Ball[];
  readonly armL: readonly Ball[];
  readonly armR: readonly Ball[];
  readonly handL: readonly Ball[];
  readonly handR: readonly Ball[];
  readonly legL: readonly Ball[];
  readonly legR: readonly Ball[];
  readonly footL: readonly Ball[];
  readonly footR: readonly Ball[];
}

/** How many levels of the trunk, from the lowest up, make the seat. */
const SEAT_LEVELS = 8;

/** The flesh of a body as balls; trunk and head count with their own depth in the direction `down`. */
export function contactsOf(body: Body, j: Joints, down: Vec): Contacts {
  const trunk = body.levels
    .filter((level) => level.along >= -0.2 && level.along <= 0.98)
    .map((level): Ball => {
      const { half, belly, back } = girth(level.along);
      const deep = dot(level.frame.z, down);
      const wide = dot(level.frame.x, down) * half;
      return {
        centre: level.centre,
        radius: Math.hypot(wide, deep * (deep > 0 ? belly : back)),
      };
    });
  const head = headBalls(body.head.centre, body.head.frame, down);
  const arm = (side: 'L' | 'R'): Ball[] => {
    const a = body[`arm${side}`];
    return [
      { centre: a.shoulder, radius: FLESH.upperArm[0] },
      { centre: a.elbow, radius: FLESH.upperArm[2] },
      { centre: a.wrist, radius: FLESH.forearm[2] },
    ];
  };
  const leg = (side: 'L' | 'R'): Ball[] => {
    const l = body[`leg${side}`];
    return [
      { centre: l.hip, radius: FLESH.thigh[0] },
      { centre: l.knee, radius: FLESH.thigh[2] },
      { centre: l.ankle, radius: FLESH.shank[2] },
    ];
  };
  const hand = (side: 'L' | 'R'): Ball[] => {
    const a = body[`arm${side}`];
    const angles = j[`arm${side}`];
    return handAt(a.wrist, a.hand, angles.grip, angles.spread).pieces.flat();
  };
  const foot = (side: 'L' | 'R'): Ball[] => {
    const l = body[`leg${side}`];
    const angles = j[`leg${side}`];
    return footAt(l.ankle, l.foot, angles.toes, angles.fan).pieces.flat();
  };
  return {
    trunk,
    seat: trunk.slice(0, SEAT_LEVELS),
    head,
    armL: arm('L'),
    armR: arm('R'),
    handL: hand('L'),
    handR: hand('R'),
    legL: leg('L'),
    legR: leg('R'),
    footL: foot('L'),
    footR: foot('R'),
  };
}

/** How far some balls reach in a direction, in head heights from the origin. */
export const reachOf = (balls: readonly Ball[], direction: Vec): number =>
  Math.max(...balls.map((b) => dot(b.centre, direction) + b.radius));

/** Straight down through a support that slopes in the plane of the page. @param slope degrees */
export const downFor = (slope: number): Vec => [-sinDeg(slope), -cosDeg(slope), 0];

/** The value in a range at which a rising function crosses zero. */
export function bisect(low: number, high: number, f: (x: number) => number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 18; i++) {
    const middle = (a + b) / 2;
    if (f(middle) > 0) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}

const DOWN: Vec = [0, -1, 0];

/** How a body is brought level with what it rests on. */
export type Rest = 'whole' | 'hands-and-knees' | 'seat' | 'head-and-seat';

/**
 * On hands and knees, and on the back, the trunk is tipped until both ends are borne; seated, the hips
 * bend until the heels are.
 */
export function levelled(j: Joints, rest: Rest): Joints {
  if (rest === 'hands-and-knees') {
    const withPitch = (pitch: number): Joints => ({ ...j, placing: { ...j.placing, pitch } });
    const pitch = bisect(40, 135, (p) => {
      const flat = { ...withPitch(p).placing, tip: 0, slope: 0 };
      const body = bodyOf({ ...j, placing: flat });
      const c = contactsOf(body, j, DOWN);
      const front = Math.max(
        reachOf(c.handL, DOWN),
        reachOf(c.handR, DOWN),
        reachOf(c.armL, DOWN),
        reachOf(c.armR, DOWN),
        reachOf(c.head, DOWN),
      );
      const rear = Math.max(
        reachOf(c.legL, DOWN),
        reachOf(c.legR, DOWN),
        reachOf(c.footL, DOWN),
        reachOf(c.footR, DOWN),
      );
      return front - rear;
    });
    return withPitch(pitch);
  }
  if (rest === 'head-and-seat') {
    const withSlope = (slope: number): Joints => ({
      ...j,
      placing: { ...j.placing, pitch: -slope },
    });
    // The more the head end sinks, the lower the head against the pelvis.
    const slope = bisect(50, 130, (s) => {
      const c = contactsOf(bodyOf(withSlope(s)), j, DOWN);
      const rear = [...c.seat, ...c.legL, ...c.legR, ...c.footL, ...c.footR];
      return reachOf(c.head, DOWN) - reachOf(rear, DOWN);
    });
    return withSlope(slope);
  }
  if (rest === 'seat') {
    const seated = (side: 'L' | 'R'): number => {
      const key = `leg${side}` as const;
      return bisect(20, 125, (hipFlex) => {
        const bent = { ...j, [key]: { ...j[key], hipFlex } };
        // The legs go with the pelvis when the whole body is pushed over.
        const upright = { ...bent, placing: { ...j.placing, slope: 0, tip: 0 } };
        const c = contactsOf(bodyOf(upright), upright, DOWN);
        return reachOf(c.trunk, DOWN) - reachOf([...c[`foot${side}`], ...c[key].slice(1)], DOWN);
      });
    };
    return {
      ...j,
      legL: { ...j.legL, hipFlex: seated('L') },
      legR: { ...j.legR, hipFlex: seated('R') },
    };
  }
  return j;
}

/** Where an examiner's hands hold a body that touches nothing. */
const HELD_AT = 0.5;

/**
 * Where the hips are, in world axes: the lowest point of the body touches its support.
 * @param hangs whether it is held in the air instead, its middle staying where it is
 */
export function hipsOn(j: Joints, hangs: boolean): Vec {
  const body = bodyOf(j);
  if (hangs) {
    const middle = levelAt(body.levels, HELD_AT).centre;
    return [j.placing.shift - middle[0], j.placing.lift - middle[1], -middle[2]];
  }
  const down = downFor(j.placing.slope);
  const c = contactsOf(body, j, down);
  const lowest = reachOf((Object.values(c) as (readonly Ball[])[]).flat(), down);
  const up = times(down, -(lowest + j.placing.lift));
  return [up[0] + j.placing.shift, up[1], up[2]];
}

/** A joint of one arm turned until the hand is on the floor, the body staying as it stands. */
export function reaching(
  j: Joints,
  arm: 'armL' | 'armR',
  joint: 'shoulderFlex' | 'shoulderOut',
  range: readonly [number, number],
): Joints {
  const gap = (value: number): number => {
    const bent = { ...j, [arm]: { ...j[arm], [joint]: value } };
    const c = contactsOf(bodyOf(bent), bent, DOWN);
    const hand = reachOf(arm === 'armL' ? [...c.handL, ...c.armL] : [...c.handR, ...c.armR], DOWN);
    const borne = [c.trunk, c.head, c.legL, c.legR, c.footL, c.footR].flat();
    return hand - reachOf(borne, DOWN);
  };
  const rising = gap(range[1]) > gap(range[0]);
  const value = bisect(range[0], range[1], (v) => (rising ? 1 : -1) * gap(v));
  return {
    ...j,
    [arm]: { ...j[arm], [joint]: clamp(value, Math.min(...range), Math.max(...range)) },
  };
}

/** World axes as the viewer sees them. @param elevation degrees looked down */
export const seen = (v: Vec, elevation: number): Vec => [
  v[0],
  v[1] * cosDeg(elevation) - v[2] * sinDeg(elevation),
  v[1] * sinDeg(elevation) + v[2] * cosDeg(elevation),
];
