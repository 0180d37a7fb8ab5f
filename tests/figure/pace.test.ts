import fc from 'fast-check';
import { expect, test } from 'vitest';
import { paceOf, secondsAt, timeAt } from '../../src/lib/figure/pace.ts';

const anyPace = fc
  .tuple(fc.integer({ min: 2, max: 5 }), fc.boolean())
  .map(([last, rhythmic]) => ({ last, pace: paceOf(last, rhythmic) }));

test('play starts at rest, stays within the response and never jumps', () => {
  fc.assert(
    fc.property(anyPace, fc.double({ min: 0, max: 30, noNaN: true }), ({ last, pace }, seconds) => {
      const time = timeAt(pace, seconds);
      expect(time).toBeGreaterThanOrEqual(0);
      expect(time).toBeLessThanOrEqual(last);
      expect(Math.abs(timeAt(pace, seconds + 0.01) - time)).toBeLessThan(0.01 * (last - 1) * 3);
    }),
  );
  expect(timeAt(paceOf(2, false), 0)).toBe(0);
});

test('each whole moment is found again at the seconds it is reached', () => {
  fc.assert(
    fc.property(anyPace, fc.nat(5), ({ last, pace }, moment) => {
      const time = Math.min(moment, last);
      if (time === 2 || time < 2 || pace.stretches.some((s) => s.to === time))
        expect(timeAt(pace, secondsAt(pace, time))).toBeCloseTo(time, 9);
      else expect(secondsAt(pace, time)).toBe(pace.seconds);
    }),
  );
});

test('a rhythm goes to and fro and ends where it began', () => {
  const pace = paceOf(3, true);
  expect(pace.stretches.filter((s) => s.from === 3 && s.to === 2)).toHaveLength(3);
  expect(timeAt(pace, pace.seconds)).toBe(2);
});
