import type { LimbPattern, LimbTokens } from '../atlas/types.ts';
import { mixNumbers } from './joints.ts';
import { NO_TINT, type Tints } from './pen.ts';
import { phasesOf } from './pose.ts';
import type { Stage } from './stage.ts';

const HEAD = 0.6;

/** Which parts a phase moves of themselves: what the examiner moves is not tinted. */
function tintsOf(phase: LimbTokens, stage: Stage): Tints {
  const given = stage.given ?? [];
  const moves = (limb: 'armL' | 'armR' | 'legL' | 'legR'): boolean =>
    phase[limb] !== 'none' || (phase.also?.[limb]?.length ?? 0) > 0;
  const arm = (side: 'L' | 'R'): number =>
    moves(`arm${side}`) || phase[`hand${side}`] !== 'none' ? 1 : 0;
  const leg = (side: 'L' | 'R'): number =>
    moves(`leg${side}`) || phase[`foot${side}`] !== 'none' ? 1 : 0;
  const limbs = { armL: arm('L'), armR: arm('R'), legL: leg('L'), legR: leg('R') };
  // Where limbs respond they carry the tint alone, so that the face stays a face.
  if (Object.values(limbs).some((t) => t > 0)) return { ...NO_TINT, ...limbs };
  return {
    ...limbs,
    // A face is told less by its colour than a limb: enough to see that the head responds.
    head: phase.head !== 'none' && !given.includes('head') ? HEAD : 0,
    trunk: phase.trunk !== 'none' && !given.includes('trunk') ? 1 : 0,
  };
}

/** How strongly each part is tinted at a time: not before the response, fully from its first phase. */
export function tintsAt(pattern: LimbPattern, stage: Stage, time: number): Tints {
  const phases = phasesOf(pattern);
  const steps = [NO_TINT, NO_TINT, ...phases.map((phase) => tintsOf(phase, stage))];
  const held = Math.min(steps.length - 1, Math.max(0, time));
  const low = Math.min(steps.length - 2, Math.floor(held));
  return mixNumbers(steps[low] ?? NO_TINT, steps[low + 1] ?? NO_TINT, held - low);
}
