import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { TAKEN_OVER } from '../../src/lib/atlas/families.ts';
import { voicesDrawn } from '../../src/lib/chart/voices.ts';

const sources = [...ATLAS.sources.values()];
const drawn = voicesDrawn(sources, TAKEN_OVER, 132);

describe('the drawing of voices', () => {
  test('sources below one another in order of year, those without one last', () => {
    const years = drawn.rows.map(({ year }) => year ?? Infinity);
    expect(years).toEqual([...years].sort((a, b) => a - b));
    const ys = drawn.rows.map(({ y }) => y);
    expect(new Set(ys).size).toBe(ys.length);
    expect(Math.max(...ys)).toBeLessThan(drawn.height);
  });

  test('every taking over has a line, and its thickness grows with the ages shared', () => {
    for (const one of TAKEN_OVER) expect(drawn.lines.some(({ taken }) => taken === one)).toBe(true);
    for (const a of drawn.lines)
      for (const b of drawn.lines)
        if (a.pair.common.length > b.pair.common.length)
          expect(a.width).toBeGreaterThanOrEqual(b.width);
  });

  test('an arc begins and ends at the middle of two rows and stays in its room', () => {
    const ys = new Set(drawn.rows.map(({ y }) => y.toFixed(1)));
    for (const { path } of drawn.lines) {
      const [, x, top, reach, , bottom] =
        /^M([\d.]+) ([\d.]+)A([\d.]+) ([\d.]+) 0 0 0 132.0 ([\d.]+)$/.exec(path)!;
      expect(x).toBe('132.0');
      expect(ys.has(top!) && ys.has(bottom!)).toBe(true);
      expect(Number(reach)).toBeLessThan(132);
    }
  });
});
