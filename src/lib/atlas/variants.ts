/** Variants of a response that sources date apart, and a reflex as one of them is tested. */
import type { Claim, LimbPattern, Reflex } from './types.ts';

/** The variants that have claims of their own, in the order of the reflex's patterns; none for most reflexes. */
export function datedVariants(
  { patterns }: Pick<Reflex, 'patterns'>,
  claims: readonly Claim[],
): readonly LimbPattern[] {
  const dated = new Set(claims.filter(({ role }) => role === 'window').map((one) => one.variant));
  return patterns.filter(({ variant }) => dated.has(variant));
}

/** Whether a claim or a count is of a variant: it says so, or does not say of which it is. */
export const isOfVariant = (
  { variant }: { variant?: string | undefined },
  wanted: string | undefined,
): boolean => wanted === undefined || variant === undefined || variant === wanted;

/** The name of a variant without what it consists in: "Propping" of "Propping: tipped forward in sitting". */
export const variantName = ({ label }: LimbPattern): string => label.split(':')[0] ?? label;

/** The short name of what was tested, or the id where the atlas does not hold the reflex. */
export function testedName(
  reflexes: ReadonlyMap<string, Reflex>,
  { reflex, variant }: { reflex: string; variant?: string | undefined },
): string {
  const known = reflexes.get(reflex);
  return known ? asTested(known, variant).short : reflex;
}

const kept = new WeakMap<Reflex, Map<string, Reflex>>();

/**
 * A reflex as one of its variants is tested: named after it, in its position, with its pattern alone; the id
 * stays. The same value each time it is asked for. The reflex itself where no variant of it is named.
 */
export function asTested(reflex: Reflex, variant: string | undefined): Reflex {
  const pattern = reflex.patterns.find((one) => one.variant === variant);
  if (!pattern || variant === undefined) return reflex;
  let ofReflex = kept.get(reflex);
  if (!ofReflex) kept.set(reflex, (ofReflex = new Map<string, Reflex>()));
  let tested = ofReflex.get(variant);
  if (!tested) {
    const name = variantName(pattern).toLowerCase();
    tested = {
      ...reflex,
      name: `${reflex.name}: ${name}`,
      short: `${reflex.short}: ${name}`,
      position: pattern.position ?? reflex.position,
      stimulus: pattern.stimulus ?? reflex.stimulus,
      patterns: [pattern],
    };
    ofReflex.set(variant, tested);
  }
  return tested;
}
