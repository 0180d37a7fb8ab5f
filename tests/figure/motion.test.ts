import { describe, expect, test } from 'vitest';
import type { Body } from '../../src/lib/figure/body.ts';
import { staged } from '../../src/lib/figure/pose.ts';
import { BONE } from '../../src/lib/figure/skeleton.ts';
import { contactsOf, downFor, reachOf, seen } from '../../src/lib/figure/solve.ts';
import { length, sub, type Vec } from '../../src/lib/figure/space.ts';
import { instantOf } from '../../src/lib/figure/view.ts';
import { VARIANTS } from './cases.ts';

const joints = (b: Body): Vec[] => [
  b.head.centre,
  b.neck,
  ...[b.armL, b.armR].flatMap((a) => [a.shoulder, a.elbow, a.wrist]),
  ...[b.legL, b.legR].flatMap((l) => [l.hip, l.knee, l.ankle]),
];

const steps = (last: number, step: number): number[] =>
  Array.from({ length: Math.round(last / step) + 1 }, (_, i) => i * step);

describe.each(VARIANTS)('$name', ({ pattern, id, last }) => {
  const staging = staged(pattern, id);
  const { stage } = staging;
  const whole = stage.framing !== 'hand' && stage.framing !== 'foot';

  test('bones keep their length at all times', () => {
    for (const time of steps(last, 0.2)) {
      const { body } = instantOf(staging, time);
      const bones: [Vec, Vec, number][] = [
        [body.armR.shoulder, body.armR.elbow, BONE.upperArm],
        [body.armR.elbow, body.armR.wrist, BONE.forearm],
        [body.legR.hip, body.legR.knee, BONE.thigh],
        [body.legR.knee, body.legR.ankle, BONE.shank],
        ...(whole
          ? ([
              [body.armL.elbow, body.armL.wrist, BONE.forearm],
              [body.legL.knee, body.legL.ankle, BONE.shank],
            ] as [Vec, Vec, number][])
          : []),
      ];
      for (const [a, b, long] of bones) expect(length(sub(a, b))).toBeCloseTo(long, 6);
    }
  });

  test('nothing sinks through what it rests on', () => {
    for (const time of steps(last, 0.2)) {
      const { body, joints } = instantOf(staging, time);
      const down = seen(downFor(joints.placing.slope), stage.elevation);
      const reach = reachOf(Object.values(contactsOf(body, joints, down)).flat(), down);
      const onGround = stage.ground !== 'none' && stage.ground !== 'edge' && whole;
      if (onGround) expect(reach).toBeCloseTo(-joints.placing.lift, 6);
      else expect(Number.isFinite(reach)).toBe(true);
    }
  });

  test('it moves without jumps', () => {
    const step = 0.02;
    let before: Vec[] | undefined;
    for (const time of steps(last, step)) {
      const now = joints(instantOf(staging, time).body);
      now.forEach((v, i) => {
        const then = before?.[i];
        // The farthest any joint goes in a whole phase is about two and a half head heights.
        if (then) expect(length(sub(v, then)), `joint ${i} at ${time}`).toBeLessThan(step * 6);
      });
      before = now;
    }
    expect(before?.length).toBe(14);
  });
});
