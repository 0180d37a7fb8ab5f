import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mirrorJoints } from '../../src/lib/figure/joints.ts';
import { anglesOf } from '../../src/lib/figure/pose.ts';
import { sceneOf, type Scene } from '../../src/lib/figure/scene.ts';
import { VARIANTS } from './cases.ts';
import { pointsOf } from './paths.ts';

const anyVariant = fc.constantFrom(...VARIANTS);
const anyTime = fc.double({ min: 0, max: 4, noNaN: true });

test('mirroring twice is the pose itself', () => {
  fc.assert(
    fc.property(anyVariant, anyTime, ({ pattern, id }, time) => {
      const pose = anglesOf(pattern, id, time, 'left');
      const other = anglesOf(pattern, id, time, 'right');
      expect(mirrorJoints(other)).toEqual(pose);
      expect(other.armR).toEqual(pose.armL);
      expect(other.axial.neckYaw + pose.axial.neckYaw).toBe(0);
    }),
    { numRuns: 60 },
  );
});

/** The sideways extent of each shape, which tells a picture from its mirror image whatever the order of its points. */
const extents = (scene: Scene): [number, number][] =>
  [...scene.layers, ...scene.marks].map(({ d }) => {
    const xs = pointsOf(d).map(([x]) => x);
    return [Math.min(...xs), Math.max(...xs)];
  });

test('a scene on the right is the mirror image of the scene on the left, shape by shape', () => {
  fc.assert(
    fc.property(anyVariant, anyTime, ({ pattern, id }, time) => {
      const left = sceneOf(pattern, id, time, 'left');
      const right = sceneOf(pattern, id, time, 'right');
      expect(right.layers.map((s) => s.name)).toEqual(left.layers.map((s) => s.name));
      const other = extents(right);
      extents(left).forEach(([low, high], i) => {
        const [otherLow = NaN, otherHigh = NaN] = other[i] ?? [];
        expect(Math.abs(left.width - high - otherLow)).toBeLessThan(0.5);
        expect(Math.abs(left.width - low - otherHigh)).toBeLessThan(0.5);
      });
    }),
    { numRuns: 40 },
  );
});
