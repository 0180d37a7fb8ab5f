import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS, familyOf } from '../../src/lib/atlas/atlas.ts';
import { judgesByDefault } from '../../src/lib/atlas/byDefault.ts';
import { alike, copiedPairs } from '../../src/lib/atlas/copies.ts';
import { WHY_ONE_VOICE } from '../../src/lib/atlas/takenOver.ts';
import { familiesOf, TAKEN_OVER } from '../../src/lib/atlas/families.ts';
import type { Claim, SourceData, Tier } from '../../src/lib/atlas/types.ts';

const sources = [...ATLAS.sources.values()];
const sourceOf = (id: string): SourceData => ATLAS.sources.get(id)!;

/** A table of invented months, a row a reflex: appears, then integrates. */
function table(id: string, rows: Readonly<Record<string, readonly [number, number]>>): SourceData {
  const claims = Object.entries(rows).map(([reflex, [from, to]]): Claim => ({
    reflex,
    role: 'window',
    basis: 'read',
    appearsStatus: 'given',
    appears: { asPrinted: '', unit: 'mo', low: from, high: from },
    integratesStatus: 'given',
    integrates: { asPrinted: '', unit: 'mo', low: to, high: to },
  }));
  return { id, short: id, year: null, tier: 'textbook', basis: 'read', claims, counts: [] };
}

describe('which ages two sources print alike', () => {
  test('cells in common and apart; "birth" alike says nothing', () => {
    const a = table('a', { stnr: [4, 8], landau: [3, 12], moro: [0, 5] });
    const b = table('b', { stnr: [4, 9], landau: [3, 12], moro: [0, 5], galant: [0, 2] });
    expect(alike(a, b).common).toEqual([
      { reflex: 'stnr', end: 'appears' },
      { reflex: 'landau', end: 'appears' },
      { reflex: 'landau', end: 'integrates' },
      { reflex: 'moro', end: 'integrates' },
    ]);
    expect(alike(a, b).apart).toEqual([{ reflex: 'stnr', end: 'integrates' }]);
  });

  test('a copy: three cells in common and none apart', () => {
    const a = table('a', { stnr: [4, 8], moro: [0, 5] });
    const whole = table('b', { stnr: [4, 8], moro: [0, 5], landau: [3, 24] });
    const two = table('c', { stnr: [4, 8] });
    const apart = table('d', { stnr: [4, 8], moro: [0, 4], landau: [3, 24] });
    const found = copiedPairs([a, whole, two, apart]).map((pair) => `${pair.a}${pair.b}`);
    expect(found).toEqual(['ab']);
  });

  test('it does not matter which of the two comes first', () => {
    for (const a of sources.slice(0, 40))
      for (const b of sources.slice(30, 50)) {
        const [one, other] = [alike(a, b), alike(b, a)];
        expect(one.common.length).toBe(other.common.length);
      }
  });

  // the onset column of the printout is one for both books (read there): every onset is alike
  test('Molnar and O’Sullivan print every onset alike and most ends apart', () => {
    const { common, apart } = alike(sourceOf('molnar-handout'), sourceOf('osullivan-handout'));
    expect(apart.filter(({ end }) => end === 'appears')).toEqual([]);
    expect(common.filter(({ end }) => end === 'appears').length).toBeGreaterThanOrEqual(6);
    expect(apart.length).toBeGreaterThan(common.filter(({ end }) => end === 'integrates').length);
  });
});

describe('families of copies', () => {
  test('every one names sources of the atlas and its reason', () => {
    for (const { by, from } of TAKEN_OVER) {
      const reason = WHY_ONE_VOICE[by]!;
      expect(ATLAS.sources.has(by), by).toBe(true);
      expect(ATLAS.sources.has(from), from).toBe(true);
      expect(reason.length).toBeGreaterThan(40);
    }
  });

  test('every pair that the function finds copied is confirmed or refused by hand: none is open', () => {
    const open = copiedPairs(sources).filter(({ a, b }) => familyOf(a) !== familyOf(b));
    expect(open).toEqual([]);
  });

  // Futagi et al. 2012, introduction: reference 1 of the ages before term is Allen & Capute 1986
  test('the review and the chapter speak with the voice of the study they have the ages from', () => {
    expect(familyOf('futagi-2012')).toBe('allen-capute-1986');
    expect(familyOf('statpearls-moro')).toBe('allen-capute-1986');
    expect(familyOf('robinson-1966')).toBe('robinson-1966');
  });

  test('families join where they share a member, in any order', () => {
    const taken = (by: string, from: string) => ({ by, from, how: 'cites' as const, reason: '' });
    const chain = [taken('b', 'a'), taken('c', 'b'), taken('d', 'c'), taken('y', 'x')];
    fc.assert(
      fc.property(fc.shuffledSubarray(chain, { minLength: 4 }), (shuffled) => {
        const family = familiesOf(shuffled);
        expect(new Set(['a', 'b', 'c', 'd'].map((id) => family.get(id))).size).toBe(1);
        expect(family.get('x')).toBe(family.get('y'));
        expect(family.get('x')).not.toBe(family.get('a'));
      }),
    );
  });
});

describe('who judges by default', () => {
  const claim = (tier: Tier, family: string, role: 'window' | 'context' = 'window') => ({
    role,
    family,
    source: { tier },
  });
  const judged = (all: ReturnType<typeof claim>[]) => all.filter(judgesByDefault(all));

  test('class notes do not, where three voices of better kinds have a window', () => {
    const better = [claim('review', 'a'), claim('textbook', 'b'), claim('primary-study', 'c')];
    const notes = claim('course-notes', 'd');
    expect(judged([...better, notes])).toEqual(better);
  });

  test('they do where there are fewer, copies counted once and context not at all', () => {
    const all = [
      claim('review', 'a'),
      claim('textbook', 'a'),
      claim('textbook', 'b'),
      claim('government-health', 'c', 'context'),
      claim('encyclopaedia', 'd'),
    ];
    expect(judged(all)).toEqual(all.filter(({ role }) => role === 'window'));
  });

  test('of the atlas: no class notes on the Moro response; on the symmetrical tonic neck they judge', () => {
    const kinds = (reflex: string) =>
      new Set(
        ATLAS.claims
          .get(reflex)!
          .filter((c) => c.judgedByDefault)
          .map((c) => c.source.tier),
      );
    expect(kinds('moro').has('course-notes')).toBe(false);
    expect(kinds('stnr').has('course-notes')).toBe(true);
  });
});
