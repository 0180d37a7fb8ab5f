/** Which sources are judged by: those that do by default, all, those of some kinds, or one. */
import type { Atlas } from '../atlas/atlas.ts';
import { sourceCount, type SourceCount } from '../atlas/families.ts';
import type { SourceData, Tier } from '../atlas/types.ts';
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
  | { by: 'default' }
  | { by: 'all' }
  | { by: 'kinds'; kinds: readonly Tier[] }
  | { by: 'one'; source: string };

export const DEFAULT_SOURCES: SourceChoice = { by: 'default' };

/** The sources a choice names, as judging takes them. */
export function chosenBy(choice: SourceChoice, atlas: Atlas): Chosen {
  switch (choice.by) {
    case 'default':
    case 'all':
      return choice.by;
    case 'kinds':
      return new Set(
        [...atlas.sources.values()].filter((s) => choice.kinds.includes(s.tier)).map((s) => s.id),
      );
    case 'one':
      // a source of one's own may have been removed or switched off since it was chosen
      return atlas.sources.has(choice.source) ? new Set([choice.source]) : 'default';
  }
}

/**
 * The sources that could be judged by alone: those with at least one claim that is a window. Of the
 * default only those that judge at least one reflex where nothing was chosen.
 */
export function judgingSources(atlas: Atlas, of: 'all' | 'default' = 'all'): SourceData[] {
  const judging = new Set(
    [...atlas.claims.values()]
      .flat()
      .filter(({ role, judgedByDefault }) => (of === 'all' ? role === 'window' : judgedByDefault))
      .map(({ source }) => source.id),
  );
  return [...atlas.sources.values()].filter(({ id }) => judging.has(id));
}

/** How many sources those are, and how many voices. */
export const judgingCount = (atlas: Atlas, of: 'all' | 'default' = 'all'): SourceCount =>
  sourceCount(judgingSources(atlas, of).map(({ id }) => id));
