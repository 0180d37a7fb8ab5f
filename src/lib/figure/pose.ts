import type { LimbPattern, LimbTokens, PatternPhase } from '../atlas/types.ts';
import { changed, STRAIGHT, type Change } from './change.ts';
import { mirrorJoints, mixJoints, type Joints } from './joints.ts';
import { levelled, reaching } from './solve.ts';
import type { Stage } from './stage.ts';
import { stageOf } from './stages.ts';
import { withTokens, type Part } from './tokens.ts';

const ALL: readonly Part[] = ['head', 'trunk', 'face', 'armL', 'armR', 'legL', 'legR'];

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

const changeAt = (stage: Stage, index: number): Change => {
  const { response } = stage;
  if (!response) return {};
  if (!('length' in response)) return response;
  return response[Math.min(index, response.length - 1)] ?? {};
};

const settled = (j: Joints, stage: Stage): Joints => levelled(j, stage.resting);

/** The poses between which the infant moves: rest, stimulus, then one for each phase of the response. */
function stills(pattern: LimbPattern, stage: Stage): Joints[] {
  const rest = changed(STRAIGHT, stage.rest);
  const given = stage.given ?? [];
  const stimulus = changed(withTokens(rest, pattern, stage.setting, given), stage.stimulus ?? {});
  const responses = phasesOf(pattern).map((phase, i) => {
    const free = ALL.filter((part) => !given.includes(part));
    const told = withTokens(stimulus, held(phase, pattern, given), stage.setting, free);
    let pose = settled(changed(told, changeAt(stage, i)), stage);
    for (const { arm, joint, range } of stage.reach ?? []) pose = reaching(pose, arm, joint, range);
    return pose;
  });
  return [settled(rest, stage), settled(stimulus, stage), ...responses];
}

const cache = new WeakMap<LimbPattern, Map<string, { stage: Stage; poses: readonly Joints[] }>>();

/** The staging of a pattern and its key poses, worked out once. */
export function staged(
  pattern: LimbPattern,
  reflexId: string,
): { stage: Stage; poses: readonly Joints[] } {
  const known = cache.get(pattern) ?? new Map<string, { stage: Stage; poses: readonly Joints[] }>();
  cache.set(pattern, known);
  const found = known.get(reflexId);
  if (found) return found;
  const stage = stageOf(pattern, reflexId);
  const made = { stage, poses: stills(pattern, stage) };
  known.set(reflexId, made);
  return made;
}

/**
 * The joint angles of the infant at a moment, in degrees.
 * @param time 0 rest, 1 stimulus, 2 response (its first phase), 3 and on further phases; between
 *   whole numbers on the way. Held to the range there is.
 * @param side `left` as the atlas writes it; `right` with left and right exchanged throughout
 */
export function anglesOf(
  pattern: LimbPattern,
  reflexId: string,
  time: number,
  side: 'left' | 'right',
): Joints {
  const { stage, poses } = staged(pattern, reflexId);
  const held = Math.min(poses.length - 1, Math.max(0, time));
  const index = Math.min(poses.length - 2, Math.floor(held));
  const [from, to] = [poses[index], poses[index + 1]];
  if (!from || !to) throw new RangeError(`no pose at time ${time}`);
  const share = held - index;
  const pose = share === 0 ? from : share === 1 ? to : settled(mixJoints(from, to, share), stage);
  return side === 'left' ? pose : mirrorJoints(pose);
}
