import { mix } from './space.ts';

/** Angles of one arm in degrees; every zero hangs straight down with the thumb forward. */
export interface ArmJoints {
  /** Raised forward; negative = behind the back. */
  shoulderFlex: number;
  /** Raised sideways, away from the trunk. */
  shoulderOut: number;
  /** Turned outward about its own length. */
  shoulderTurn: number;
  /** Bent from straight: the inner angle is 180 minus this. */
  elbow: number;
  /** Palm turned forward (+90) or back (-90). */
  forearmTurn: number;
  /** Bent towards the palm; negative = bent back. */
  wrist: number;
  /** Fingers: 0 open, 1 closed to a fist. */
  grip: number;
  /** Fingers fanned: 0 together, 1 spread. */
  spread: number;
}

/** Angles of one leg in degrees; every zero stands straight with the foot at a right angle. */
export interface LegJoints {
  hipFlex: number;
  hipOut: number;
  /** Turned outward about its own length. */
  hipTurn: number;
  /** Bent from straight: the inner angle is 180 minus this. */
  knee: number;
  /** Toes raised; negative = pointed. */
  ankle: number;
  /** Toes: -1 curled down, 0 at ease, 1 raised. */
  toes: number;
  /** Toes fanned: 0 together, 1 apart. */
  fan: number;
}

/** What the face does, each 0 to 1 but for the gaze. */
export interface FaceJoints {
  eyes: number;
  /** Gaze from -1 (the infant's right) to 1 (its left). */
  gaze: number;
  mouth: number;
  purse: number;
  /** Lips round something held in the mouth, cheeks drawn in. */
  suck: number;
  swallow: number;
  cry: number;
}

/** Angles of head and trunk in degrees, left as positive. */
export interface AxialJoints {
  neckYaw: number;
  /** Chin to chest; negative = head bent back. */
  neckFlex: number;
  neckTilt: number;
  /** Rounded forward; negative = hollow back. */
  trunkFlex: number;
  /** Curved with the hollow to the left. */
  trunkSide: number;
  /** Shoulders turned to the left against the pelvis. */
  trunkTwist: number;
}

/** How the pelvis stands in the picture, in degrees. */
export interface Placing {
  /** Turned to face the right of the page (90) or the left (-90); 180 shows the back. */
  yaw: number;
  /** Tipped forward: 90 prone, -90 supine, in a side view. */
  pitch: number;
  /** Tipped in the plane of the page, clockwise. */
  tip: number;
  /** Rolled about the body's own length, to its left. */
  roll: number;
  /** What the infant rests on sloped in the plane of the page, clockwise. */
  slope: number;
  /** Lifted off what it rests on, in head heights. */
  lift: number;
  /** Shifted to the right of the page, in head heights. */
  shift: number;
}

/** Every number that a still of the body is made of. */
export interface Joints {
  axial: AxialJoints;
  face: FaceJoints;
  armL: ArmJoints;
  armR: ArmJoints;
  legL: LegJoints;
  legR: LegJoints;
  placing: Placing;
}

type Numbers<T> = { [K in keyof T]: number };

/** Each number part of the way to its counterpart. */
export function mixNumbers<T extends Numbers<T>>(a: T, b: T, share: number): T {
  const out = { ...a };
  for (const key of Object.keys(a) as (keyof T)[])
    out[key] = mix(a[key], b[key], share) as T[keyof T];
  return out;
}

/** The body part of the way from one pose to another. @param share 0 to 1 */
export function mixJoints(a: Joints, b: Joints, share: number): Joints {
  return {
    axial: mixNumbers(a.axial, b.axial, share),
    face: mixNumbers(a.face, b.face, share),
    armL: mixNumbers(a.armL, b.armL, share),
    armR: mixNumbers(a.armR, b.armR, share),
    legL: mixNumbers(a.legL, b.legL, share),
    legR: mixNumbers(a.legR, b.legR, share),
    placing: mixNumbers(a.placing, b.placing, share),
  };
}

/** Left turned into right. Twice is the pose itself. */
export function mirrorJoints(j: Joints): Joints {
  const { axial, face, placing } = j;
  return {
    axial: {
      ...axial,
      neckYaw: -axial.neckYaw,
      neckTilt: -axial.neckTilt,
      trunkSide: -axial.trunkSide,
      trunkTwist: -axial.trunkTwist,
    },
    face: { ...face, gaze: -face.gaze },
    armL: j.armR,
    armR: j.armL,
    legL: j.legR,
    legR: j.legL,
    placing: {
      ...placing,
      yaw: -placing.yaw,
      tip: -placing.tip,
      slope: -placing.slope,
      roll: -placing.roll,
      shift: -placing.shift,
    },
  };
}
