import type { LimbPattern, Position } from '../atlas/types.ts';
import type { Stage } from './stage.ts';
import { CLOSE } from './stages/close.ts';
import { LYING, prone, supine } from './stages/lying.ts';
import { hanging, HANGING_STAGES } from './stages/hanging.ts';
import type { MilestonePose } from './milestonePoses.ts';
import { MILESTONES } from './stages/milestones.ts';
import { handsAndKnees, SIDE } from './stages/side.ts';
import { heldUpright, sitting, standing, UPRIGHT } from './stages/upright.ts';

/** The staging of each reflex that has its own, by id or by id and variant. */
const OWN: Readonly<Record<string, Stage>> = {
  ...LYING,
  ...SIDE,
  ...HANGING_STAGES,
  ...UPRIGHT,
  ...CLOSE,
};

/** How a reflex without a staging of its own is drawn: from its position alone. */
const BY_POSITION: Record<Position, Stage> = {
  supine,
  prone,
  'prone-suspension': hanging,
  'upright-held': heldUpright,
  sitting,
  'hands-and-knees': handsAndKnees,
  standing,
  'side-lying': supine,
};

/** The staging of a variant of a reflex. @param position where it has none of its own; supine if left out */
export function stageOf(pattern: LimbPattern, reflexId: string, position?: Position): Stage {
  return (
    OWN[`${reflexId}/${pattern.variant}`] ?? OWN[reflexId] ?? BY_POSITION[position ?? 'supine']
  );
}

/** Whether a variant of a reflex is staged in its own way. */
export const hasOwnStage = (pattern: LimbPattern, reflexId: string): boolean =>
  `${reflexId}/${pattern.variant}` in OWN || reflexId in OWN;

/** How an infant is staged that does what a milestone asks for. */
export const milestoneStage = (milestone: MilestonePose): Stage => MILESTONES[milestone];
