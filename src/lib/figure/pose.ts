import type { LimbPattern, LimbTokens, PatternPhase, Position } from '../atlas/types.ts';
import { changed, STRAIGHT, type Change } from './change.ts';
import { mirrorJoints, mixJoints, type Joints } from './joints.ts';
import { levelled, reaching, type Rest } from './solve.ts';
import type { Stage } from './stage.ts';
import { stageOf } from './stages.ts';
import { withTokens, type Part } from './tokens.ts';

const ALL: readonly Part[] = ['head', 'trunk', 'face', 'armL', 'armR', 'legL', 'legR'];

/** A variant of a reflex as it is staged: the poses between which the infant moves. */
export interface Staging {
  readonly pattern: LimbPattern;
  readonly stage: Stage;
  /** Rest, stimulus, then one for each phase of the response. */
  readonly poses: readonly Joints[];
}

/** The phases of a response; a response without any is one. */
export const phasesOf = (pattern: LimbPattern): readonly LimbTokens[] =>
  pattern.phases?.length ? pattern.phases : [pattern];

/** A phase with the parts that the examiner brings about, which stay as long as they are held. */
function held(phase: LimbTokens, pattern: LimbPattern, given: readonly Part[]): LimbTokens {
  const kept: Partial<PatternPhase> = {};
  if (given.includes('head')) kept.head = pattern.head;
  if (given.includes('trunk')) kept.trunk = pattern.trunk;
  return { ...phase, ...kept };
}

function changeFor(stage: Stage, phase: number): Change {
  const { response } = stage;
  if (!response) return {};
  if (!('length' in response)) return response;
  return response[Math.min(phase, response.length - 1)] ?? {};
}

/** How the still at a place in the list rests; between two stills of different kinds, as a whole. */
function restAt(stage: Stage, place: number): Rest {
  const { resting } = stage;
  if (typeof resting === 'string') return resting;
  const kind = (index: number): Rest => resting[Math.min(index, resting.length - 1)] ?? 'whole';
  const [before, after] = [kind(Math.floor(place)), kind(Math.ceil(place))];
  return before === after ? before : 'whole';
}

function posesOf(pattern: LimbPattern, stage: Stage): Joints[] {
  const given = stage.given ?? [];
  const free = ALL.filter((part) => !given.includes(part));
  const rest = changed(STRAIGHT, stage.rest);
  const stimulus = changed(withTokens(rest, pattern, stage.setting, given), stage.stimulus ?? {});
  const responses = phasesOf(pattern).map((phase, i) => {
    const told = withTokens(stimulus, held(phase, pattern, given), stage.setting, free);
    let pose = levelled(changed(told, changeFor(stage, i)), restAt(stage, i + 2));
    for (const { arm, joint, range } of stage.reach ?? []) pose = reaching(pose, arm, joint, range);
    return pose;
  });
  return [levelled(rest, restAt(stage, 0)), levelled(stimulus, restAt(stage, 1)), ...responses];
}

const stagings = new WeakMap<LimbPattern, Map<string, Staging>>();

/**
 * The staging of a variant with its poses, worked out once.
 * @param position where the reflex has no staging of its own, the position it is examined in
 */
export function staged(pattern: LimbPattern, reflexId: string, position?: Position): Staging {
  const known = stagings.get(pattern) ?? new Map<string, Staging>();
  stagings.set(pattern, known);
  const key = `${reflexId} ${position ?? ''}`;
  let staging = known.get(key);
  if (!staging) {
    const stage = stageOf(pattern, reflexId, position);
    staging = { pattern, stage, poses: posesOf(pattern, stage) };
    known.set(key, staging);
  }
  return staging;
}

/** The last moment of a staging. */
export const endOf = (staging: Staging): number => staging.poses.length - 1;

/** The pose at a moment. @param time see {@link anglesOf} */
export function poseAt({ stage, poses }: Staging, time: number): Joints {
  const within = Math.min(poses.length - 1, Math.max(0, time));
  const index = Math.min(poses.length - 2, Math.floor(within));
  const [from, to] = [poses[index], poses[index + 1]];
  if (!from || !to) throw new RangeError(`no pose at time ${time}`);
  const share = within - index;
  if (share === 0) return from;
  if (share === 1) return to;
  return levelled(mixJoints(from, to, share), restAt(stage, within));
}

/**
 * The joint angles of the infant at a moment, in degrees.
 * @param time 0 rest, 1 stimulus, 2 response (its first phase), 3 and on further phases; between
 *   whole numbers on the way. Held to the range there is.
 * @param side `left` as the atlas writes it; `right` with left and right exchanged throughout
 * @param position for a reflex without a staging of its own; on the back if left out
 */
export function anglesOf(
  pattern: LimbPattern,
  reflexId: string,
  time: number,
  side: 'left' | 'right',
  position?: Position,
): Joints {
  const pose = poseAt(staged(pattern, reflexId, position), time);
  return side === 'left' ? pose : mirrorJoints(pose);
}

/** A pose that answers nothing, held as its stage has it. */
export function stagedStill(stage: Stage, pattern: LimbPattern): Staging {
  const pose = levelled(changed(STRAIGHT, stage.rest), restAt(stage, 0));
  return { pattern, stage, poses: [pose, pose, pose] };
}
