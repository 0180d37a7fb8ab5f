/** The atlas as one value: everything that is known, indexed. Passed as an argument, never global. */
import { MILESTONES } from './milestones.ts';
import { REFLEXES } from './reflexes.ts';
import { SEQUENCES } from './sequences.ts';
import { SOURCES } from './sources.ts';
import { checkAtlas } from './check.ts';
import type { Count } from './count.ts';
import type { AtlasParts, Claim, Milestone, Reflex, Sequence, SourceData } from './types.ts';

/** A claim with the source that makes it. */
export interface SourcedClaim extends Claim {
  source: SourceData;
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
  /** Every claim on a reflex, in the order of the sources. */
  claims: ReadonlyMap<string, readonly SourcedClaim[]>;
  counts: ReadonlyMap<string, readonly SourcedCount[]>;
}

const byId = <T extends { id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

/** Indexes the parts. A fault in the data is an error here, so that it can never be judged by. */
export function buildAtlas(parts: AtlasParts): Atlas {
  const faults = checkAtlas(parts);
  if (faults.length > 0) throw new Error(`the atlas has faults:\n${faults.join('\n')}`);
  const { reflexes, sources } = parts;
  const claims = sources.flatMap((source) => source.claims.map((claim) => ({ ...claim, source })));
  const counts = sources.flatMap((source) => source.counts.map((count) => ({ ...count, source })));
  return {
    reflexes: byId(reflexes),
    sources: byId(sources),
    milestones: byId(parts.milestones),
    sequences: parts.sequences,
    claims: new Map(reflexes.map((r) => [r.id, claims.filter((c) => c.reflex === r.id)])),
    counts: new Map(reflexes.map((r) => [r.id, counts.filter((c) => c.reflex === r.id)])),
  };
}

/** What Tidemark knows by itself. */
export const ATLAS_PARTS: AtlasParts = {
  reflexes: REFLEXES,
  sources: SOURCES,
  milestones: MILESTONES,
  sequences: SEQUENCES,
};

export const ATLAS: Atlas = buildAtlas(ATLAS_PARTS);

/** The sides on which a reflex is recorded. */
export function sidesOf(reflex: Reflex): readonly ('left' | 'right' | 'midline')[] {
  if (!reflex.testedPerSide) return ['midline'];
  return reflex.midline ? ['left', 'right', 'midline'] : ['left', 'right'];
}
