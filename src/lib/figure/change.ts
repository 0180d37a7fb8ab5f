import type { ArmJoints, AxialJoints, FaceJoints, Joints, LegJoints, Placing } from './joints.ts';

/** Angles to set; whatever is not named stays. `arms` and `legs` set both sides alike. */
export interface Change {
  readonly axial?: Partial<AxialJoints>;
  readonly face?: Partial<FaceJoints>;
  readonly arms?: Partial<ArmJoints>;
  readonly armL?: Partial<ArmJoints>;
  readonly armR?: Partial<ArmJoints>;
  readonly legs?: Partial<LegJoints>;
  readonly legL?: Partial<LegJoints>;
  readonly legR?: Partial<LegJoints>;
  readonly placing?: Partial<Placing>;
}

/** A pose with some angles set anew. */
export const changed = (j: Joints, c: Change): Joints => ({
  axial: { ...j.axial, ...c.axial },
  face: { ...j.face, ...c.face },
  armL: { ...j.armL, ...c.arms, ...c.armL },
  armR: { ...j.armR, ...c.arms, ...c.armR },
  legL: { ...j.legL, ...c.legs, ...c.legL },
  legR: { ...j.legR, ...c.legs, ...c.legR },
  placing: { ...j.placing, ...c.placing },
});

/** Straight and at ease: what every pose is changed from. */
export const STRAIGHT: Joints = {
  axial: { neckYaw: 0, neckFlex: 0, neckTilt: 0, trunkFlex: 0, trunkSide: 0, trunkTwist: 0 },
  face: { eyes: 1, gaze: 0, mouth: 0, purse: 0, suck: 0, swallow: 0, cry: 0 },
  armL: arm(),
  armR: arm(),
  legL: leg(),
  legR: leg(),
  placing: { yaw: 0, pitch: 0, tip: 0, roll: 0, slope: 0, lift: 0, shift: 0 },
};

function arm(): ArmJoints {
  return {
    shoulderFlex: 10,
    shoulderOut: 14,
    shoulderTurn: 0,
    elbow: 24,
    forearmTurn: 0,
    wrist: 0,
    grip: 0.42,
    spread: 0.3,
  };
}

function leg(): LegJoints {
  return { hipFlex: 6, hipOut: 8, hipTurn: 8, knee: 8, ankle: 0, toes: 0, fan: 0 };
}
