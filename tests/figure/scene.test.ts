import { MILESTONE_POSES } from '../../src/lib/figure/milestonePoses.ts';
import { describe, expect, test } from 'vitest';
import type { Position } from '../../src/lib/atlas/types.ts';
import {
  momentsOf,
  sceneOf,
  thumbnailOf,
  type Moment,
  type Scene,
  type Shape,
} from '../../src/lib/figure/scene.ts';
import { hasOwnStage } from '../../src/lib/figure/stages.ts';
import { INVENTED, VARIANTS } from './cases.ts';
import { pointsOf } from './paths.ts';

/** Shapes of a scene that leave its frame, by name. */
function leaving(scene: Scene, names?: RegExp): string[] {
  const outside = ([x, y]: readonly [number, number]): boolean =>
    !(x >= 0 && y >= 0 && x <= scene.width && y <= scene.height);
  const shapes: readonly Shape[] = [...scene.layers, ...scene.marks];
  return shapes
    .filter((s) => (!names || names.test(s.name)) && pointsOf(s.d).some(outside))
    .map((s) => s.name);
}

/** What a close-up is about; the rest of the body goes on beyond its window. */
const SUBJECT = /^(head|ear|finger|thumb|toe|sole|touch|arrow|trail|turn)/;

describe.each(VARIANTS)('$name', ({ pattern, id, last }) => {
  test('has a staging of its own', () => {
    expect(hasOwnStage(pattern, id)).toBe(true);
  });

  test('nothing leaves the frame; of a close-up, what it is about does not', () => {
    for (let time = 0; time <= last; time += 0.25) {
      const scene = sceneOf(pattern, id, time, 'left');
      expect(leaving(scene, scene.window && SUBJECT), `at ${time}`).toEqual([]);
    }
  });

  test('every shape is a finite path', () => {
    for (const time of [0, 0.5, 1, 1.5, last]) {
      const scene = sceneOf(pattern, id, time, 'right');
      for (const shape of [...scene.layers, ...scene.marks]) {
        expect(shape.d).toMatch(/^M[-\d.]/);
        expect(shape.d).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });

  test('the response is seen: the drawing differs from rest, and so does the stimulus or what is done', () => {
    const text = (time: number): string => JSON.stringify(sceneOf(pattern, id, time, 'left'));
    expect(text(2)).not.toBe(text(0));
    expect(text(1)).not.toBe(text(0));
  });

  test('moments are named in order', () => {
    const moments = momentsOf(pattern, id);
    expect(moments.map((m) => m.time)).toEqual(Array.from({ length: last + 1 }, (_, i) => i));
    const first: readonly Moment[] = ['rest', 'stimulus', 'response'];
    expect(moments.slice(0, 3).map((m) => m.key)).toEqual(first);
    expect(new Set(moments.map((m) => m.key)).size).toBe(last + 1);
  });
});

const POSITIONS: readonly Position[] = [
  'supine',
  'prone',
  'prone-suspension',
  'upright-held',
  'sitting',
  'hands-and-knees',
  'standing',
  'side-lying',
];

test.each(POSITIONS)(
  'a reflex the atlas does not hold is drawn from its pattern: %s',
  (position) => {
    const scenes = [0, 0.5, 1, 1.5, 2].map((t) =>
      sceneOf(INVENTED, 'invented', t, 'left', position),
    );
    for (const scene of scenes) expect(leaving(scene)).toEqual([]);
    const [rest, , , , response] = scenes;
    expect(response?.layers.some((s) => s.name === 'head')).toBe(true);
    expect(response?.layers.find((s) => s.name === 'forearm-L')?.fill).not.toEqual(
      rest?.layers.find((s) => s.name === 'forearm-L')?.fill,
    );
  },
);

test.each([
  'arms-from-each-other',
  'arms-from-legs',
  'forward',
  'sideways',
  'backward',
  ...MILESTONE_POSES,
] as const)('the small picture stays in its frame and is small: %s', (apart) => {
  const scene = thumbnailOf(apart);
  expect(leaving(scene)).toEqual([]);
  expect(JSON.stringify(scene).length).toBeLessThan(20_000);
  expect(scene.layers.some((s) => s.name.startsWith('knuckle') || s.name === 'mouth')).toBe(false);
});
