/**
 * Which limbs a response sets apart from each other, computed from its limb pattern, so that a
 * reflex someone adds joins the right sequence by itself.
 */
import type { Dissociation, LimbPattern, LimbToken, Reflex } from './types.ts';

const moves = (token: LimbToken): boolean => token !== 'none';

/** Both limbs move, and not alike. */
const unlike = (a: LimbToken, b: LimbToken): boolean => moves(a) && moves(b) && a !== b;

/** Both limbs move, and alike. */
const alike = (a: LimbToken, b: LimbToken): boolean => moves(a) && a === b;

/**
 * What one variant sets apart. A rhythmic alternation holds no limb apart from another, since each
 * takes its turn, so it does not count.
 */
export function patternSetsApart(pattern: LimbPattern): Dissociation | undefined {
  if (pattern.phasesRepeat) return undefined;
  if (unlike(pattern.armL, pattern.armR)) return 'arms-from-each-other';
  if (
    alike(pattern.armL, pattern.armR) &&
    alike(pattern.legL, pattern.legR) &&
    pattern.armL !== pattern.legL
  )
    return 'arms-from-legs';
  return undefined;
}

/** What a response sets apart: what every one of its variants does. */
export function setsApart(reflex: Pick<Reflex, 'patterns'>): Dissociation | undefined {
  const [first, ...rest] = reflex.patterns.map(patternSetsApart);
  return rest.every((apart) => apart === first) ? first : undefined;
}
