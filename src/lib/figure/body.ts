import type { ArmJoints, Joints, LegJoints } from './joints.ts';
import { BONE, JOIN } from './skeleton.ts';
import { add, at, inFrame, reflected, turned, UPRIGHT, type Frame, type Vec } from './space.ts';

/** The middle of the trunk at one level. */
export interface Level {
  readonly along: number;
  readonly centre: Vec;
  readonly frame: Frame;
}

/** Where an arm's joints are. Hand axes: fingers along -y, palm to -x, thumb to +z. */
export interface ArmPlace {
  readonly shoulder: Vec;
  readonly elbow: Vec;
  readonly wrist: Vec;
  readonly hand: Frame;
}

/** Where a leg's joints are. Foot axes: toes along +z, sole to -y, big toe to -x. */
export interface LegPlace {
  readonly hip: Vec;
  readonly knee: Vec;
  readonly ankle: Vec;
  readonly foot: Frame;
}

/** The body in space: head heights, hip centre at the origin unless moved. */
export interface Body {
  readonly levels: readonly Level[];
  readonly pelvis: Frame;
  readonly chest: Frame;
  readonly neck: Vec;
  readonly head: { readonly centre: Vec; readonly frame: Frame };
  readonly armL: ArmPlace;
  readonly armR: ArmPlace;
  readonly legL: LegPlace;
  readonly legR: LegPlace;
}

const STEPS = 20;
const LOWEST = -0.2;
const HIGHEST = 1.05;

/** The trunk as an arc in space, walked in short steps so that bending never changes its length. */
function spine(pelvis: Frame, hips: Vec, j: Joints['axial']): Level[] {
  const step = (HIGHEST - LOWEST) / STEPS;
  const frameAt = (along: number): Frame => {
    const share = Math.min(1, Math.max(0, along));
    return turned(
      turned(turned(pelvis, 'y', j.trunkTwist * share), 'z', -j.trunkSide * share),
      'x',
      j.trunkFlex * share,
    );
  };
  const below: Vec = [0, LOWEST * BONE.trunk, 0];
  const levels: Level[] = [];
  let centre = at(hips, pelvis, below);
  for (let i = 0; i <= STEPS; i++) {
    const along = LOWEST + i * step;
    levels.push({ along, centre, frame: frameAt(along) });
    centre = at(centre, frameAt(along + step / 2), [0, step * BONE.trunk, 0]);
  }
  return levels;
}

/** The trunk at any level between the lowest and the highest. @param along 0 hips, 1 root of the neck */
export function levelAt(levels: readonly Level[], along: number): Level {
  const place = ((along - LOWEST) / (HIGHEST - LOWEST)) * STEPS;
  const index = Math.min(STEPS - 1, Math.max(0, Math.floor(place)));
  const low = levels[index];
  const high = levels[index + 1];
  if (!low || !high) throw new RangeError(`no level of the trunk at ${along}`);
  const share = place - index;
  const frame = share < 0.5 ? low.frame : high.frame;
  const centre: Vec = [
    low.centre[0] + (high.centre[0] - low.centre[0]) * share,
    low.centre[1] + (high.centre[1] - low.centre[1]) * share,
    low.centre[2] + (high.centre[2] - low.centre[2]) * share,
  ];
  return { along, centre, frame };
}

function arm(base: Frame, shoulder: Vec, j: ArmJoints): ArmPlace {
  const upper = turned(
    turned(turned(base, 'x', -j.shoulderFlex), 'z', j.shoulderOut),
    'y',
    j.shoulderTurn,
  );
  const elbow = at(shoulder, upper, [0, -BONE.upperArm, 0]);
  const fore = turned(upper, 'x', -j.elbow);
  const wrist = at(elbow, fore, [0, -BONE.forearm, 0]);
  return { shoulder, elbow, wrist, hand: turned(turned(fore, 'y', j.forearmTurn), 'z', -j.wrist) };
}

function leg(base: Frame, hip: Vec, j: LegJoints): LegPlace {
  const thigh = turned(turned(turned(base, 'x', -j.hipFlex), 'z', j.hipOut), 'y', j.hipTurn);
  const knee = at(hip, thigh, [0, -BONE.thigh, 0]);
  const shank = turned(thigh, 'x', j.knee);
  const ankle = at(knee, shank, [0, -BONE.shank, 0]);
  return { hip, knee, ankle, foot: turned(shank, 'x', -j.ankle) };
}

/** The pelvis' axes for a placing. @param elevation how far the viewer looks down, in degrees */
export function pelvisFrame(p: Joints['placing'], elevation: number): Frame {
  const seen = turned(UPRIGHT, 'x', elevation);
  return turned(turned(turned(turned(seen, 'z', -p.tip), 'y', p.yaw), 'x', p.pitch), 'y', p.roll);
}

/** The body that a set of joint angles makes, hips at `hips`. @param elevation degrees looked down */
export function bodyOf(j: Joints, elevation = 0, hips: Vec = [0, 0, 0]): Body {
  const pelvis = pelvisFrame(j.placing, elevation);
  const levels = spine(pelvis, hips, j.axial);
  const shoulders = levelAt(levels, JOIN.shoulder.along);
  const chest = shoulders.frame;
  const root = levelAt(levels, 1);
  const { neckYaw, neckFlex, neckTilt } = j.axial;
  const half = turned(turned(root.frame, 'z', -neckTilt / 2), 'x', neckFlex / 2);
  const neck = at(root.centre, half, [0, BONE.neck, 0]);
  const head = turned(turned(turned(root.frame, 'z', -neckTilt), 'x', neckFlex), 'y', neckYaw);
  const { shoulder, hip } = JOIN;
  const hipLevel = levelAt(levels, hip.along);
  const joint = (level: Level, from: typeof shoulder | typeof hip, sign: 1 | -1): Vec =>
    at(level.centre, level.frame, [sign * from.out, 0, from.forward]);
  return {
    levels,
    pelvis,
    chest,
    neck: root.centre,
    // Before the turn the skull's middle lies above and a little before the top of the neck.
    head: {
      centre: add(
        neck,
        inFrame(turned(turned(root.frame, 'z', -neckTilt), 'x', neckFlex), [0, 0.24, 0.09]),
      ),
      frame: head,
    },
    armL: arm(chest, joint(shoulders, shoulder, 1), j.armL),
    armR: arm(reflected(chest), joint(shoulders, shoulder, -1), j.armR),
    legL: leg(pelvis, joint(hipLevel, hip, 1), j.legL),
    legR: leg(reflected(pelvis), joint(hipLevel, hip, -1), j.legR),
  };
}
