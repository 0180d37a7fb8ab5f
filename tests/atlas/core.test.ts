/** What a page has first is all that is judged by; the rest, fetched later, changes no age and no grade. */
import { describe, expect, test } from 'vitest';
import { ATLAS, buildAtlas, CORE_PARTS } from '../../src/lib/atlas/atlas.ts';
import { REMARKS } from '../../src/lib/atlas/remarks.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { examplesOn, WRITTEN_FOR } from '../../src/lib/examples/examples.ts';

const core = buildAtlas(CORE_PARTS);

describe('the core of the atlas', () => {
  test('has every window, and every count of an answer at an age', () => {
    for (const [id, claims] of ATLAS.claims)
      expect(core.claims.get(id)).toHaveLength(claims.length);
    for (const [id, counts] of ATLAS.counts) {
      const answers = counts.filter(
        ({ role, answer, unit }) => role === 'count' && answer !== 'other' && unit !== 'milestone',
      );
      expect(core.counts.get(id), id).toHaveLength(answers.length);
    }
  });

  test('is smaller than the whole, which has all of it', () => {
    expect(core.sources.size).toBeLessThan(ATLAS.sources.size);
    for (const id of core.sources.keys()) expect(ATLAS.sources.has(id)).toBe(true);
  });

  test.each(examplesOn(WRITTEN_FOR, ATLAS))('judges $id as the whole does', ({ record }) => {
    const graded = (atlas: typeof core) =>
      judgeCase(record, { atlas, sheet: sheetOf(atlas, 'default') }).map(({ findings }) =>
        findings.map(({ attention, judged, caps }) => [
          attention,
          judged.verdict,
          caps.map(({ code }) => code),
        ]),
      );
    expect(graded(core)).toEqual(graded(ATLAS));
  });
});

test('everything said beside a claim reaches its claim', () => {
  const written = Object.values(REMARKS).flatMap((of) => Object.values(of).flat());
  const reached = [...CORE_PARTS.sources].flatMap(({ id }) => ATLAS.sources.get(id)!.claims);
  for (const key of ['note', 'correction'] as const) {
    const some = written.filter((remark) => remark[key] !== undefined);
    expect(some.length).toBeGreaterThan(10);
    expect(reached.filter((claim) => claim[key] !== undefined)).toHaveLength(some.length);
  }
});
