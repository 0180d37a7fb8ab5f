import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { likenessOf, lookAlikes, mistakenFor } from '../../src/lib/atlas/likeness.ts';

const reflexes = [...ATLAS.reflexes.values()];
const any = fc.constantFrom(...reflexes);
const reflex = (id: string) => ATLAS.reflexes.get(id)!;

test('likeness is between 0 and 1, the same both ways, and whole with itself', () => {
  fc.assert(
    fc.property(any, any, (a, b) => {
      const likeness = likenessOf(a, b);
      expect(likeness).toBeGreaterThanOrEqual(0);
      expect(likeness).toBeLessThanOrEqual(1);
      expect(likenessOf(b, a)).toBeCloseTo(likeness, 12);
      expect(likenessOf(a, a)).toBe(1);
    }),
  );
});

test('the classic look-alikes of teaching are among the suggested pairs (common practice, no source)', () => {
  const pairs = new Set(
    lookAlikes(reflexes).flatMap(({ a, b }) => [`${a.id} ${b.id}`, `${b.id} ${a.id}`]),
  );
  for (const pair of [
    'moro acoustic-startle',
    'labyrinthine-righting optical-righting',
    'protective-forward protective-backward',
    'stepping placing-leg',
  ])
    expect(pairs.has(pair), pair).toBe(true);
});

test('what it is mistaken for comes most alike first', () => {
  const found = mistakenFor(reflex('moro'), reflexes).map((m) => m.likeness);
  expect(found.length).toBeGreaterThan(0);
  expect(found).toEqual([...found].sort((a, b) => b - a));
});
