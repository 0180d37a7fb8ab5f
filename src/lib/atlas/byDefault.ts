/** Which claims are judged by where no sources were chosen. */
import type { Claim, Tier } from './types.ts';

/** Kinds that judge by default; the rest only where these are few. */
const BETTER: ReadonlySet<Tier> = new Set<Tier>([
  'primary-study',
  'review',
  'textbook',
  'government-health',
]);

/** With fewer voices of better kinds than this on a reflex, every kind is judged by. */
export const ENOUGH_VOICES = 3;

/** A claim as far as the default looks at it. */
interface Weighed {
  role: Claim['role'];
  family: string;
  source: { tier: Tier };
}

/**
 * Whether the claims on one reflex are judged by where nothing was chosen: what was measured in
 * infants, reviews, textbooks and health bodies; course notes, encyclopaedias and common practice only
 * where fewer than three voices of those have a window.
 */
export function judgesByDefault(claims: readonly Weighed[]): (claim: Weighed) => boolean {
  const voices = new Set(
    claims.filter((c) => c.role === 'window' && BETTER.has(c.source.tier)).map((c) => c.family),
  );
  const few = voices.size < ENOUGH_VOICES;
  return ({ role, source }) => role === 'window' && (few || BETTER.has(source.tier));
}
