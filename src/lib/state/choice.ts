/** Which sources are judged by: all, those of some kinds, or one. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Tier } from '../atlas/types.ts';
import type { Chosen } from '../judge/judge.ts';

export const TIERS = [
  'primary-study',
  'review',
  'textbook',
  'government-health',
  'encyclopaedia',
  'course-notes',
  'common-practice',
] as const satisfies readonly Tier[];

export type SourceChoice =
  { by: 'all' } | { by: 'kinds'; kinds: readonly Tier[] } | { by: 'one'; source: string };

export const ALL_SOURCES: SourceChoice = { by: 'all' };

/** The sources a choice names, as judging takes them. */
export function chosenBy(choice: SourceChoice, atlas: Atlas): Chosen {
  switch (choice.by) {
    case 'all':
      return 'all';
    case 'kinds':
      return new Set(
        [...atlas.sources.values()].filter((s) => choice.kinds.includes(s.tier)).map((s) => s.id),
      );
    case 'one':
      // a source of one's own may have been removed or switched off since it was chosen
      return atlas.sources.has(choice.source) ? new Set([choice.source]) : 'all';
  }
}

/** The sources that could be judged by alone: those with at least one claim that is a window. */
export const judgingSources = (atlas: Atlas) =>
  [...atlas.sources.values()].filter((source) =>
    source.claims.some((claim) => claim.role === 'window'),
  );
