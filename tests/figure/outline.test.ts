import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bandPath,
  blobBandPath,
  clockwise,
  discPath,
  throughPath,
} from '../../src/lib/figure/outline.ts';
import type { Disc, Spot } from '../../src/lib/figure/page.ts';
import { pointsOf } from './paths.ts';

const place = fc.double({ min: 20, max: 260, noNaN: true });
const disc: fc.Arbitrary<Disc> = fc.record({
  x: place,
  y: place,
  r: fc.double({ min: 1, max: 20, noNaN: true }),
});

/** How far outside all discs a point lies; the points of an arc lie on its disc. */
const outside = (discs: readonly Disc[], [x, y]: Spot): number =>
  Math.min(...discs.map((d) => Math.abs(Math.hypot(x - d.x, y - d.y) - d.r)));

describe('a rubber band round discs', () => {
  test('touches only their edges, to the rounding of the path', () => {
    fc.assert(
      fc.property(fc.array(disc, { minLength: 1, maxLength: 3 }), (discs) => {
        for (const p of pointsOf(bandPath(discs))) expect(outside(discs, p)).toBeLessThan(0.2);
      }),
    );
  });

  test('goes no farther than the farthest disc', () => {
    fc.assert(
      fc.property(fc.array(disc, { minLength: 2, maxLength: 3 }), (discs) => {
        const points = pointsOf(bandPath(discs));
        const right = Math.max(...discs.map((d) => d.x + d.r));
        expect(Math.max(...points.map(([x]) => x))).toBeLessThan(right + 0.1);
      }),
    );
  });
});

test('a disc is a disc: all points of its path lie at its radius', () => {
  fc.assert(
    fc.property(disc, (d) => {
      for (const p of pointsOf(discPath(d))) expect(outside([d], p)).toBeLessThan(0.11);
    }),
  );
});

test('a band round one round blob is that circle', () => {
  const blob = { x: 50, y: 60, spread: [400, 0, 400] as const };
  const xs = pointsOf(blobBandPath([blob])).map(([x]) => x);
  expect(Math.max(...xs)).toBeCloseTo(70, 0);
  expect(Math.min(...xs)).toBeCloseTo(30, 0);
});

test('outlines run clockwise whichever way they are given, so that overlaps leave no holes', () => {
  const square: Spot[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];
  expect(clockwise(square)).toEqual(square);
  expect(clockwise([...square].reverse())).toEqual(square);
  expect(throughPath(square, true)).toMatch(/^M0 0c.*z$/);
  expect(throughPath(square, false)).not.toContain('z');
});
