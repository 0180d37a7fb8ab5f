/** Counts of real infants: what a machine may read from them. Published figures are in tests/outside. */
import { describe, expect, test } from 'vitest';
import { ATLAS_PARTS } from '../../src/lib/atlas/atlas.ts';
import { checkAtlas } from '../../src/lib/atlas/check.ts';
import type { Count } from '../../src/lib/atlas/count.ts';

const all = ATLAS_PARTS.sources.flatMap(({ id, counts }) =>
  counts.map((count) => ({ source: id, count })),
);

const groupsOf = (rows: typeof all, key: (row: (typeof all)[number]) => string) => {
  const groups = new Map<string, Count[]>();
  for (const row of rows) groups.set(key(row), [...(groups.get(key(row)) ?? []), row.count]);
  return groups;
};

describe('counts of real infants', () => {
  test('one key stands for one answer, and never for two different measures of a source', () => {
    for (const [key, rows] of groupsOf(
      all,
      ({ source, count }) => `${source} ${count.reflex} ${count.measureId}`,
    )) {
      expect(new Set(rows.map(({ measure }) => measure)).size, key).toBe(1);
      expect(new Set(rows.map(({ answer }) => answer)).size, key).toBe(1);
    }
  });

  test('only the plantar response was counted at four or more ages by one measure', () => {
    const curves = [
      ...groupsOf(
        all.filter(
          ({ count }) => count.role === 'count' && count.n !== null && count.percent !== null,
        ),
        ({ source, count }) =>
          `${source} ${count.reflex} ${count.measureId} ${count.population} ${count.qualifier}`,
      ),
    ].filter(([, rows]) => new Set(rows.map(({ low }) => low)).size >= 4);
    expect(curves.map(([, [first]]) => `${first!.reflex} ${first!.measureId}`).sort()).toEqual([
      'plantar-response extensor-both-feet',
      'plantar-response flexor-both-feet',
    ]);
  });

  test('patients and graded signs of children are context, and no answer of theirs counts', () => {
    for (const { source, count } of all)
      if (count.low !== null && count.unit === 'mo' && count.low >= 36)
        expect(count, source).toMatchObject({ role: 'context', answer: 'other' });
    for (const id of ['kanda-1985', 'romeo-2011', 'serra-2025', 'sohn-2011'])
      for (const { count } of all.filter(({ source }) => source === id))
        expect(count, id).toMatchObject({ role: 'context', healthy: false });
  });

  test.each<[string, Partial<Count>, string]>([
    ['more than there were', { n: 10, hits: 11 }, 'more were counted than there were'],
    ['hits without a base', { n: null, hits: 1 }, 'more were counted than there were'],
    ['a key with spaces', { measureId: 'both feet' }, 'the measure has no key'],
    ['an other answer to none', { answer: 'other' }, 'no answer of an examination'],
  ])('the check refuses %s', (_, change, fault) => {
    const [first, ...rest] = ATLAS_PARTS.sources;
    const good = all.find(({ source }) => source === 'shapiro-1981')!.count;
    const withCount = (count: Count) => ({
      ...ATLAS_PARTS,
      sources: [{ ...first!, counts: [count] }, ...rest],
    });
    expect(checkAtlas(withCount(good))).toEqual([]);
    expect(checkAtlas(withCount({ ...good, ...change })).join()).toContain(fault);
  });
});
