/** What a verdict rests on, gathered for who asks for it. */
import type { Atlas, SourcedClaim } from '../atlas/atlas.ts';
import { isOfVariant } from '../atlas/variants.ts';
import { countsNear, type NearCount } from '../judge/counts.ts';
import type { JudgedFinding } from '../judge/judge.ts';
import { voicesOf, type Voice } from '../judge/verdict.ts';

/** A claim with what it says of a finding. */
export interface Spoken {
  claim: SourcedClaim;
  voice: Voice;
}

/** What a verdict rests on: claims that speak at this age, those that are silent, and context. */
export interface Ground {
  speaking: readonly Spoken[];
  silent: readonly Spoken[];
  context: readonly SourcedClaim[];
  counts: readonly NearCount[];
}

export function groundOf(one: JudgedFinding, atlas: Atlas): Ground {
  const { windows } = one.reading.compiled;
  const spoken = voicesOf(one.finding.response, one.reading).flatMap((voice): Spoken[] => {
    const window = windows[voice.window];
    return window ? [{ claim: window.claim, voice }] : [];
  });
  const isOf = (of: { variant?: string }): boolean => isOfVariant(of, one.finding.variant);
  const all = (atlas.claims.get(one.reflex.id) ?? []).filter(isOf);
  const counts = (atlas.counts.get(one.reflex.id) ?? []).filter(isOf);
  return {
    speaking: spoken
      .filter(({ voice }) => voice.speaks > 0.5)
      .sort((a, b) => b.voice.probability - a.voice.probability),
    silent: spoken.filter(({ voice }) => voice.speaks <= 0.5),
    context: all.filter((claim) => claim.role === 'context'),
    counts: countsNear(counts, one.reading.ageDays as never),
  };
}
