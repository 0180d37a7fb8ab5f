/** What a still must show for its response to be told from its neighbours. Our own drawing: tests of form. */
import { describe, expect, test } from 'vitest';
import { staged } from '../../src/lib/figure/pose.ts';
import { sceneOf } from '../../src/lib/figure/scene.ts';
import { FLESH } from '../../src/lib/figure/skeleton.ts';
import { contactsOf, reachOf } from '../../src/lib/figure/solve.ts';
import { between, type Vec } from '../../src/lib/figure/space.ts';
import { instantOf } from '../../src/lib/figure/view.ts';
import { VARIANTS } from './cases.ts';

function variant(name: string): (typeof VARIANTS)[number] {
  const found = VARIANTS.find((v) => v.name === name);
  if (!found) throw new Error(`the atlas holds no ${name}`);
  return found;
}

const DOWN: Vec = [0, -1, 0];
/** How far a thumb or a fingertip may dip below or hover above the floor, in head heights. */
const SLACK = 0.03;

describe('arms that catch a fall bear on the floor', () => {
  test.each([
    ['protective-sideways-fall-left', ['L']],
    ['protective-backward-back', ['L', 'R']],
  ] as const)('%s', (name, sides) => {
    const { pattern, id } = variant(name);
    const staging = staged(pattern, id);
    // Level with the floor, so that depth does not count as height.
    const level = { ...staging, stage: { ...staging.stage, elevation: 0 } };
    const { body, joints } = instantOf(level, 2);
    const contacts = contactsOf(body, joints, DOWN);
    for (const side of sides) {
      const hand = reachOf([...contacts[`hand${side}`], ...contacts[`arm${side}`]], DOWN);
      expect(Math.abs(hand)).toBeLessThan(SLACK);
      const { wrist, shoulder } = body[`arm${side}`];
      // Beside or behind the body it catches, never under it.
      expect((wrist[0] - shoulder[0]) * (name.includes('back') ? -1 : 1)).toBeGreaterThan(0.05);
    }
  });
});

test('hands and knees, tilted: the raised arm and the raised leg lie apart on the page', () => {
  const { pattern, id } = variant('equilibrium-quadruped-tilt-left');
  const { body } = instantOf(staged(pattern, id), 2);
  const along = [0, 0.25, 0.5, 0.75, 1];
  const arm = along.map((t) => between(body.armR.elbow, body.armR.wrist, t));
  const leg = along.map((t) => between(body.legR.knee, body.legR.ankle, t));
  const gaps = arm.flatMap((a) => leg.map((l) => Math.hypot(a[0] - l[0], a[1] - l[1])));
  // Flesh on both, and a hand's width of paper between them.
  expect(Math.min(...gaps)).toBeGreaterThan(FLESH.forearm[1] + FLESH.shank[1] + 0.2);
  // Nor does the head, half a head height round its middle, cover either.
  const [x, y] = body.head.centre;
  for (const p of [...arm, ...leg]) expect(Math.hypot(p[0] - x, p[1] - y)).toBeGreaterThan(0.7);
});

describe('a support tilted down to the left', () => {
  const boards = VARIANTS.filter((v) => staged(v.pattern, v.id).stage.ground === 'board');

  test('there are such', () => expect(boards.length).toBeGreaterThanOrEqual(5));

  test.each(boards)('is low, and marked, on the left of the infant: $name', ({ pattern, id }) => {
    const { body, marks } = instantOf(staged(pattern, id), 1);
    expect(body.armL.shoulder[1]).toBeLessThan(body.armR.shoulder[1]);
    const left = Math.sign(body.armL.shoulder[0] - body.armR.shoulder[0]);
    const [arrow] = marks.flatMap((m) => m.lines);
    expect(Math.sign(arrow?.points[0]?.[0] ?? 0)).toBe(left);
  });
});

test.each(['amphibian-left-hip', 'stepping-left-swing', 'placing-leg-left-foot'])(
  'the examiner’s fingers are seen on the body: %s',
  (name) => {
    const { pattern, id } = variant(name);
    const names = sceneOf(pattern, id, 2, 'left').layers.map((s) => s.name);
    expect(names.lastIndexOf('examiner-finger')).toBeGreaterThan(names.indexOf('nappy'));
  },
);
