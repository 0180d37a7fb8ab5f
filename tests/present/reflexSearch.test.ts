import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { PROSE } from '../../src/lib/atlas/prose.ts';
import { nameIndex } from '../../src/lib/atlas/search.ts';
import { WHOLE } from '../../src/lib/chart/viewport.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import {
  ANYTHING,
  fitting,
  isAnything,
  queryOf,
  wantedFrom,
  type Wanted,
} from '../../src/lib/present/reflexSearch.ts';
import { rankedQuarrels } from '../../src/lib/present/disagreements.ts';
import { en } from '../../src/lib/words/en.ts';

const index = nameIndex([...ATLAS.reflexes.values()], PROSE);
const find = (wanted: Partial<Wanted>): string[] =>
  fitting({ ...ANYTHING, ...wanted }, ATLAS.reflexes, index).map(({ id }) => id);

describe('finding a reflex', () => {
  test('everything fits when nothing is wanted', () => {
    expect(isAnything(ANYTHING)).toBe(true);
    expect(find({})).toEqual([...ATLAS.reflexes.keys()]);
  });

  test('all that is wanted must fit', () => {
    expect(find({ does: ['arms unlike'] })).toEqual(
      expect.arrayContaining(['atnr', 'crawling', 'swimming']),
    );
    expect(find({ does: ['arms unlike'], position: 'supine' })).toEqual(['atnr']);
    expect(find({ does: ['arms unlike', 'feet curl'] })).toEqual([]);
    expect(find({ side: 'midline', group: 'tonic-postural' })).toEqual(['stnr', 'tlr']);
    expect(find({ name: 'fensing' })).toEqual(['atnr']);
  });

  test.each<Wanted>([
    ANYTHING,
    { name: 'fensing', position: 'supine', group: 'tonic-postural', side: 'pair', does: [] },
    { ...ANYTHING, does: ['arms unlike', 'arms close-in', 'head turns'] },
  ])('an address leads back to what was wanted', (wanted) => {
    expect(wantedFrom(new URLSearchParams(queryOf(wanted)))).toEqual(wanted);
  });

  test('an address that is not understood asks for nothing', () => {
    expect(wantedFrom(new URLSearchParams('side=up&does=arms-fly,<b>'))).toEqual(ANYTHING);
  });
});

describe('the quarrels in their rank', () => {
  const ranked = rankedQuarrels(ATLAS, sheetOf(ATLAS), WHOLE);

  test('the widest apart comes first, and the counts at its worst age are of its sources', () => {
    const shares = ranked.map(({ quarrel }) => quarrel.share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    for (const one of ranked.filter(({ quarrel }) => quarrel.share > 0)) {
      const { phases, sources, quarrel, reflex } = one;
      const speaking = phases.reduce((sum, n) => sum + n, 0);
      expect(speaking).toBeGreaterThan(1);
      expect(speaking).toBeLessThanOrEqual(sources.sources);
      expect(quarrel.quarrelDays).toBeLessThanOrEqual(quarrel.spokenDays);
      expect(en.orderPages.quarrelSentence({ ...quarrel, ...one, name: reflex.name })).toContain(
        `of ${en.atlas.sourcesWords(sources)}`,
      );
    }
  });
});
