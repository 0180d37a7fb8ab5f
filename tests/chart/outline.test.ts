/** Against the shapes of d3-shape 3.2.1, which draw the same lines and are too heavy for the first view. */
import { curveBumpX, line } from 'd3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bumped, straight } from '../../src/lib/chart/outline.ts';

const number = fc.double({ min: -1e4, max: 1e4, noNaN: true });
// d3's line closes a single point, which no outline has
const points = fc.array(fc.tuple(number, number), { minLength: 2, maxLength: 12 });

describe('a line through points', () => {
  it('is straight as the line of d3-shape is', () => {
    const reference = line().digits(4);
    fc.assert(
      fc.property(points, (some) => {
        expect(straight(some, 4)).toBe(reference(some));
      }),
    );
  });

  it('leaves and reaches each point level as its bump curve does', () => {
    const reference = line().curve(curveBumpX).digits(2);
    fc.assert(
      fc.property(points, (some) => {
        // halves are added in another order there: the last digit may differ
        const figures = (path: string | null): number[] =>
          [...(path ?? '').matchAll(/-?[\d.]+(?:e-?\d+)?/g)].map(Number);
        const ours = figures(bumped(some, 2));
        const theirs = figures(reference(some));
        expect(ours).toHaveLength(theirs.length);
        ours.forEach((figure, index) =>
          expect(Math.abs(figure - theirs[index]!)).toBeLessThan(0.011),
        );
      }),
    );
  });

  it('is empty without a point', () => {
    expect(straight([], 2)).toBe('');
    expect(bumped([], 2)).toBe('');
  });
});
