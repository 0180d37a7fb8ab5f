/**
 * The bones and the flesh on them, in head heights (crown to chin = 1).
 * Proportions are those of the first year: the body straight is about 3.3 heads long, the arms do not
 * reach past the hips' joint by more than a hand, and the belly is the widest part of the trunk.
 */

/** Lengths of bones in head heights. They never change: a limb that looks shorter points at the viewer. */
export const BONE = {
  trunk: 1.17,
  neck: 0.1,
  upperArm: 0.53,
  forearm: 0.46,
  thigh: 0.58,
  shank: 0.54,
} as const;

/** Radii of the flesh in head heights: at the start of the bone, at its fullest, at its end. */
export const FLESH = {
  upperArm: [0.162, 0.156, 0.132],
  forearm: [0.132, 0.144, 0.098],
  thigh: [0.18, 0.23, 0.172],
  shank: [0.17, 0.176, 0.114],
  neck: [0.19, 0.18, 0.17],
} as const;

/** Where limbs join the trunk: `along` from hips (0) to the root of the neck (1), the rest in head heights. */
export const JOIN = {
  shoulder: { along: 0.86, out: 0.365, forward: 0.02 },
  hip: { along: 0.0, out: 0.225, forward: 0.02 },
} as const;

/** The trunk from below the crotch to the root of the neck: half width, belly and back depth. */
export const TRUNK: readonly {
  readonly along: number;
  readonly half: number;
  readonly belly: number;
  readonly back: number;
}[] = [
  { along: -0.18, half: 0.17, belly: 0.12, back: 0.14 },
  { along: -0.12, half: 0.31, belly: 0.22, back: 0.26 },
  { along: 0, half: 0.435, belly: 0.31, back: 0.335 },
  { along: 0.16, half: 0.49, belly: 0.39, back: 0.31 },
  { along: 0.34, half: 0.515, belly: 0.42, back: 0.28 },
  { along: 0.52, half: 0.495, belly: 0.385, back: 0.275 },
  { along: 0.7, half: 0.45, belly: 0.325, back: 0.285 },
  { along: 0.84, half: 0.41, belly: 0.27, back: 0.285 },
  { along: 0.95, half: 0.34, belly: 0.2, back: 0.24 },
  { along: 1.02, half: 0.22, belly: 0.13, back: 0.16 },
];

/** What a joint may do, in degrees. Working limits of this drawing, not measured ranges of motion. */
export const LIMITS = {
  neckYaw: [-90, 90],
  neckFlex: [-65, 45],
  neckTilt: [-40, 40],
  trunkFlex: [-55, 75],
  trunkSide: [-60, 60],
  trunkTwist: [-50, 50],
  shoulderFlex: [-60, 175],
  shoulderOut: [-45, 130],
  shoulderTurn: [-95, 110],
  elbow: [0, 148],
  forearmTurn: [-95, 110],
  wrist: [-90, 90],
  hipFlex: [-25, 140],
  hipOut: [-35, 85],
  hipTurn: [-50, 90],
  knee: [0, 150],
  ankle: [-60, 50],
} as const satisfies Record<string, readonly [number, number]>;
