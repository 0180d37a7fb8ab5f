import { REFLEXES } from '../../src/lib/atlas/reflexes.ts';
import type { LimbPattern, LimbTokens } from '../../src/lib/atlas/types.ts';
import { phasesOf } from '../../src/lib/figure/pose.ts';

/** Every variant of every reflex. */
export interface Variant {
  name: string;
  id: string;
  pattern: LimbPattern;
  /** The time of the last phase. */
  last: number;
}

export const VARIANTS: readonly Variant[] = REFLEXES.flatMap((reflex) =>
  reflex.patterns.map((pattern) => ({
    name: `${reflex.id}-${pattern.variant}`,
    id: reflex.id,
    pattern,
    last: phasesOf(pattern).length + 1,
  })),
);

/** Every phase of every variant with the time it is reached. */
export const PHASES: readonly (Variant & { time: number; tokens: LimbTokens })[] = VARIANTS.flatMap(
  (variant) =>
    phasesOf(variant.pattern).map((tokens, i) => ({
      ...variant,
      name: `${variant.name} phase ${i + 1}`,
      time: i + 2,
      tokens,
    })),
);

/** A pattern that the atlas does not hold. */
export const INVENTED: LimbPattern = {
  variant: 'invented',
  label: 'Invented',
  stimulusSide: 'left',
  head: 'tilted-left',
  trunk: 'none',
  armL: 'extended',
  armR: 'flexed',
  legL: 'flexed',
  legR: 'extended',
  handL: 'open',
  handR: 'closed',
  footL: 'none',
  footR: 'open',
  also: { armL: ['abducted'] },
};
