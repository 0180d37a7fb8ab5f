import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import {
  ageRelation,
  closestVariants,
  differenceRows,
  tellApart,
  type AgeSpans,
  type Compared,
} from '../../src/lib/atlas/differences.ts';

const NO_AGES: AgeSpans = { appears: null, integrates: null, lifelong: false };
const one = (id: string, variant?: string, ages = NO_AGES): Compared => {
  const reflex = ATLAS.reflexes.get(id)!;
  return { reflex, variant: variant ?? reflex.patterns[0]!.variant, ages };
};

describe('what tells two responses apart', () => {
  test('the spread of the arms against the startle: arms, hands, head and the stimulus', () => {
    const told = tellApart(one('moro'), one('acoustic-startle'));
    expect(told.stimulus).toEqual(['head-drop', 'sound']);
    expect(told.position).toBeNull();
    expect(told.parts.find((p) => p.part === 'hands')).toMatchObject({
      first: { left: ['open'], right: ['open'] },
      second: { left: ['closed'], right: ['closed'] },
    });
    expect(told.parts.find((p) => p.part === 'arms')).toMatchObject({
      first: { left: ['abducted', 'extended'] },
      second: { left: ['flexed'] },
    });
  });

  test('two righting reactions of the head move alike and differ in nothing but what is not seen', () => {
    const told = tellApart(one('labyrinthine-righting'), one('optical-righting'));
    expect(told).toMatchObject({ same: ['head'], parts: [], stimulus: null, position: null });
  });

  test('forward and backward props: the same arms and hands, another push, another position', () => {
    const told = tellApart(one('protective-forward'), one('protective-backward'));
    expect(told.same).toEqual(['arms', 'hands']);
    expect(told.stimulus).toEqual(['lowering', 'push']);
    expect(told.position).toEqual(['prone-suspension', 'sitting']);
  });

  test('the variants that look most alike are the ones compared', () => {
    const [, variant] = closestVariants(ATLAS.reflexes.get('moro')!, ATLAS.reflexes.get('tlr')!);
    expect(variant).toBe('supine');
  });

  const any = fc.constantFrom(...ATLAS.reflexes.keys());

  test('a response has no difference from itself, and a difference is the same seen from either side', () => {
    fc.assert(
      fc.property(any, any, (a, b) => {
        const self = tellApart(one(a), one(a));
        expect([self.parts, self.stimulus, self.position]).toEqual([[], null, null]);
        const there = tellApart(one(a), one(b));
        const back = tellApart(one(b), one(a));
        expect(back.same).toEqual(there.same);
        expect(back.parts.map((p) => [p.part, p.second, p.first])).toEqual(
          there.parts.map((p) => [p.part, p.first, p.second]),
        );
      }),
    );
  });
});

describe('the table', () => {
  test('a response of two phases has a line for each, and the other has none in the second', () => {
    const rows = differenceRows([one('moro'), one('acoustic-startle')]);
    const hands = rows.filter((row) => row.aspect === 'hands');
    expect(hands).toHaveLength(2);
    expect(hands[1]).toMatchObject({ phase: 2, same: false });
    expect(hands[1]!.values[1]).toBeNull();
  });

  test('parts that move in none are left out; four responses give four values a row', () => {
    const ids = ['palmar-grasp', 'plantar-grasp', 'babkin', 'traction'];
    const rows = differenceRows(ids.map((id) => one(id)));
    expect(rows.every((row) => row.values.length === 4)).toBe(true);
    expect(rows.some((row) => row.aspect === 'trunk')).toBe(false);
    expect(rows.find((row) => row.aspect === 'hands')).toMatchObject({ same: false });
  });
});

describe('ages', () => {
  const span = (from: number, to: number) => ({ from, to });
  const early: AgeSpans = {
    appears: span(200, 280),
    integrates: span(340, 400),
    lifelong: false,
  };
  const late: AgeSpans = { appears: span(450, 500), integrates: null, lifelong: true };

  test('one integrated in every source before the other appears in any', () => {
    expect(ageRelation(early, late)).toBe('first-gone-before-second');
    expect(ageRelation(late, early)).toBe('second-gone-before-first');
  });

  test('a reaction that stays for life in any source is never gone', () => {
    expect(ageRelation({ ...early, lifelong: true }, late)).toBe('overlap');
    expect(ageRelation(early, { ...late, appears: span(399, 500) })).toBe('overlap');
  });
});
