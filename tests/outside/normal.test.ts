/**
 * The normal distribution against a general-purpose statistics library (jStat) and the convolution
 * with a window against plain numerical integration.
 */
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { readAt } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { below, density } from '../../src/lib/judge/normal.ts';
import { ROW } from '../../src/lib/judge/phases.ts';
import { windowsOf, type Window } from '../../src/lib/judge/window.ts';

/** Simpson's rule on an even number of steps. */
function integrate(f: (x: number) => number, from: number, to: number, steps: number): number {
  const h = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i++) sum += (i % 2 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

describe('the standard normal', () => {
  test('density and distribution agree with jStat from -8 to 8', () => {
    for (let z = -8; z <= 8; z += 0.01) {
      expect(below(z)).toBeCloseTo(jstat.normal.cdf(z, 0, 1), 12);
      expect(density(z)).toBeCloseTo(jstat.normal.pdf(z, 0, 1), 14);
    }
  });

  test('the distribution is the integral of the density, also in the far tail', () => {
    for (const z of [-6, -3.3, -1, 0, 0.5, 2, 4.4, 7.5]) {
      const mass = integrate(density, -12, z, 20_000);
      expect(below(z)).toBeCloseTo(mass, 12);
    }
    // tail values of printed tables (NIST handbook of statistics, from memory): 1e-3 and 1e-6 points
    expect(below(-3.090232)).toBeCloseTo(0.001, 8);
    expect(below(-4.753424)).toBeCloseTo(0.000001, 11);
  });
});

/** The shape of one window at an exact age, from the words of the rule. */
function shape(w: Window, x: number): { phase: number; height: number } {
  if (x < w.speaksFrom || x >= w.speaksTo) return { phase: 0, height: 0 };
  if (x < w.appearsFrom) return { phase: 1, height: 0 };
  if (x < w.appearsTo)
    return { phase: 2, height: (x - w.appearsFrom) / (w.appearsTo - w.appearsFrom) };
  if (x < w.integratesFrom) return { phase: 3, height: 1 };
  if (x < w.integratesTo)
    return { phase: 4, height: (w.integratesTo - x) / (w.integratesTo - w.integratesFrom) };
  return { phase: 5, height: 0 };
}

test('the convolution in closed form is the numerical integral, for every claim of the atlas', () => {
  const sheet = sheetOf(ATLAS);
  let worst = 0;
  for (const [id, claims] of ATLAS.claims) {
    const windows = windowsOf(claims);
    for (const [age, sd] of [
      [250, 3.6],
      [300, 8],
      [372, 15.3],
      [440, 5.1],
      [520, 13.6],
    ] as const) {
      const reading = readAt(sheet.get(id)!, age, sd);
      windows.forEach((w, i) => {
        // midpoints of narrow strips: the shape has steps, where Simpson's rule would stumble
        const steps = 16_000;
        const dz = 18 / steps;
        const sums = new Float64Array(ROW);
        let height = 0;
        for (let k = 0; k < steps; k++) {
          const z = -9 + (k + 0.5) * dz;
          const at = shape(w, age + sd * z);
          const p = density(z) * dz;
          sums[at.phase]! += p;
          height += at.height * p;
        }
        sums.forEach(
          (sum, k) => (worst = Math.max(worst, Math.abs(sum - reading.phases[i * ROW + k]!))),
        );
        worst = Math.max(worst, Math.abs(height - reading.expected[i]!));
      });
    }
  }
  expect(worst).toBeLessThan(5e-4); // one strip's mass at a step
});
