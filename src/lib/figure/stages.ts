import type { LimbPattern } from '../atlas/types.ts';
import type { Stage } from './stage.ts';
import { CLOSE } from './stages/close.ts';
import { LYING, supine } from './stages/lying.ts';
import { SIDE } from './stages/side.ts';
import { UPRIGHT_STAGES } from './stages/upright.ts';

const ALL: Readonly<Record<string, Stage>> = { ...LYING, ...SIDE, ...UPRIGHT_STAGES, ...CLOSE };

export function stageOf(pattern: LimbPattern, reflexId: string): Stage {
  return ALL[`${reflexId}/${pattern.variant}`] ?? ALL[reflexId] ?? supine;
}
