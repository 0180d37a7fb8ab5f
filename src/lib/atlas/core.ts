/** The atlas as one value: everything that is known, indexed. Passed as an argument, never global. */
import { MILESTONES } from './milestones.ts';
import { OWN_PREFIX } from './ownId.ts';
import { REFLEXES } from './reflexes.ts';
import { SEQUENCES } from './sequences.ts';
import { SOURCES } from './sources.ts';
import { judgesByDefault } from './byDefault.ts';
import { familyOf } from './families.ts';
import type { Count } from './count.ts';
import { datedVariants } from './variants.ts';
import type { AtlasParts, Claim, Milestone, Reflex, Sequence, SourceData } from './types.ts';

export { familyOf, sourceCount, type SourceCount } from './families.ts';

/** A claim with the source that makes it. */
export interface SourcedClaim extends Claim {
  source: SourceData;
  /** The family of copies its source belongs to, or the source's own id where it stands alone. */
  family: string;
  /** Whether it is judged by where no sources were chosen. */
  judgedByDefault: boolean;
}

/** A count of real infants with the source that made it. */
export interface SourcedCount extends Count {
  source: SourceData;
}

export interface Atlas {
  reflexes: ReadonlyMap<string, Reflex>;
  sources: ReadonlyMap<string, SourceData>;
  milestones: ReadonlyMap<string, Milestone>;
  sequences: readonly Sequence[];
  /** Of each reflex whose variants are dated apart (variants.ts), the ids of those variants. */
  variants: ReadonlyMap<string, readonly string[]>;
  /** Every claim on a reflex, in the order of the sources. */
  claims: ReadonlyMap<string, readonly SourcedClaim[]>;
  counts: ReadonlyMap<string, readonly SourcedCount[]>;
}

const byId = <T extends { id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

/** Every claim on a reflex, in the order of the sources, with its voice. */
function claimsOn(reflex: string, sources: readonly SourceData[]): SourcedClaim[] {
  const said = sources.flatMap((source) =>
    source.claims
      .filter((claim) => claim.reflex === reflex)
      .map((claim) => ({ ...claim, source, family: familyOf(source.id) })),
  );
  const judges = judgesByDefault(said);
  // what a user typed in is meant to be judged by
  return said.map((claim) => ({
    ...claim,
    judgedByDefault:
      judges(claim) || (claim.role === 'window' && claim.source.id.startsWith(OWN_PREFIX)),
  }));
}

/** Indexes the parts, which must be `faultless` (check.ts). */
export function buildAtlas(parts: AtlasParts): Atlas {
  const { reflexes, sources } = parts;
  const counts = sources.flatMap((source) => source.counts.map((count) => ({ ...count, source })));
  const claims = new Map(reflexes.map(({ id }) => [id, claimsOn(id, sources)]));
  const variants = reflexes.flatMap((reflex): [string, string[]][] => {
    const dated = datedVariants(reflex, claims.get(reflex.id) ?? []).map((one) => one.variant);
    return dated.length > 0 ? [[reflex.id, dated]] : [];
  });
  return {
    reflexes: byId(reflexes),
    sources: byId(sources),
    milestones: byId(parts.milestones),
    sequences: parts.sequences,
    variants: new Map(variants),
    claims,
    counts: new Map(reflexes.map((r) => [r.id, counts.filter((c) => c.reflex === r.id)])),
  };
}

/** What Tidemark judges by. `atlas.ts` has what stands beside it too. */
export const CORE_PARTS: AtlasParts = {
  reflexes: REFLEXES,
  sources: SOURCES,
  milestones: MILESTONES,
  sequences: SEQUENCES,
};

/** The sides on which a reflex is recorded. */
export function sidesOf(reflex: Reflex): readonly ('left' | 'right' | 'midline')[] {
  if (!reflex.testedPerSide) return ['midline'];
  return reflex.midline ? ['left', 'right', 'midline'] : ['left', 'right'];
}
