import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { isOfVariant } from '../../src/lib/atlas/variants.ts';
import { readAt, totalsOf } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { ROW } from '../../src/lib/judge/phases.ts';
import { verdictOf, VERDICTS } from '../../src/lib/judge/verdict.ts';
import { windowsOf, type Window } from '../../src/lib/judge/window.ts';

const sheet = sheetOf(ATLAS);
const ids = [...sheet.keys()];
const anyReflex = fc.constantFrom(...ids);
const anyAge = fc.double({ min: 140, max: 1100, noNaN: true });
const anySd = fc.constantFrom(0.5, 3.6, 8, 15.3);

/** The phase and the expectation at an exact age, straight from the words of the rule. */
function plain(w: Window, x: number): { phase: number; expectation: number } {
  if (x < w.speaksFrom || x >= w.speaksTo) return { phase: 0, expectation: 0 };
  if (x < w.appearsFrom) return { phase: 1, expectation: 0 };
  if (x < w.appearsTo)
    return { phase: 2, expectation: (x - w.appearsFrom) / (w.appearsTo - w.appearsFrom) };
  if (x < w.integratesFrom) return { phase: 3, expectation: 1 };
  if (x < w.integratesTo)
    return { phase: 4, expectation: (w.integratesTo - x) / (w.integratesTo - w.integratesFrom) };
  return { phase: 5, expectation: 0 };
}

describe('reading at an exact age', () => {
  test('agrees with the rule taken word for word, on and between the corners', () => {
    for (const id of ids) {
      const [reflex, variant] = id.split('/');
      const claims = ATLAS.claims.get(reflex!)!.filter((claim) => isOfVariant(claim, variant));
      const windows = windowsOf(claims);
      const corners = windows.flatMap((w) => [
        w.appearsFrom,
        w.appearsTo,
        w.integratesFrom,
        w.integratesTo,
        w.speaksFrom,
        w.speaksTo,
      ]);
      const ages = corners.filter(Number.isFinite).flatMap((c) => [c - 0.25, c, c + 0.25]);
      for (const age of ages) {
        const reading = readAt(sheet.get(id)!, age, 0);
        windows.forEach((w, i) => {
          const { phase, expectation } = plain(w, age);
          expect(reading.phases[i * ROW + phase]).toBe(1);
          expect(reading.expected[i]).toBeCloseTo(expectation, 10);
        });
      }
    }
  });

  test('the phase never goes back as the age grows', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        anyReflex,
        anyAge,
        fc.double({ min: 0, max: 400, noNaN: true }),
        (id, age, later) => {
          const at = (x: number) => readAt(sheet.get(id)!, x, 0).phases;
          const [a, b] = [at(age), at(age + later)];
          for (let i = 0; i < a.length / ROW; i++) {
            const before = a.slice(i * ROW, i * ROW + ROW).indexOf(1);
            const after = b.slice(i * ROW, i * ROW + ROW).indexOf(1);
            if (before <= 0 || after <= 0) continue; // one of the two ages is silent
            compared += 1;
            expect(after).toBeGreaterThanOrEqual(before);
          }
        },
      ),
    );
    expect(compared).toBeGreaterThan(0);
  });
});

describe('reading at an age in doubt', () => {
  test('each row of probabilities sums to 1', () => {
    fc.assert(
      fc.property(anyReflex, anyAge, anySd, (id, age, sd) => {
        const { phases } = readAt(sheet.get(id)!, age, sd);
        for (let at = 0; at < phases.length; at += ROW) {
          const sum = phases.slice(at, at + ROW).reduce((a, b) => a + b, 0);
          expect(sum).toBeCloseTo(1, 12);
        }
      }),
    );
  });

  test('a vanishing doubt is the exact age', () => {
    fc.assert(
      fc.property(anyReflex, anyAge, (id, age) => {
        const exact = readAt(sheet.get(id)!, age, 0);
        const near = readAt(sheet.get(id)!, age, 1e-9);
        exact.expected.forEach((e, i) => expect(near.expected[i]).toBeCloseTo(e, 6));
      }),
    );
  });
});

test('shares sum to 1, and a source read in two parts has one voice', () => {
  let judgedCount = 0;
  fc.assert(
    fc.property(anyReflex, anyAge, anySd, fc.boolean(), (id, age, sd, there) => {
      const reading = readAt(sheet.get(id)!, age, sd);
      const judged = verdictOf(
        { response: there ? 'elicited' : 'not-elicited', state: 'quiet-alert' },
        reading,
      );
      if (judged.verdict === 'not-judged') return;
      judgedCount += 1;
      const sum = VERDICTS.reduce((total, verdict) => total + judged.shares[verdict], 0);
      expect(sum).toBeCloseTo(1, 9);
      const sources = new Set(reading.compiled.windows.map((w) => w.claim.family));
      expect(totalsOf(reading).speaking).toBeLessThanOrEqual(sources.size + 1e-9);
    }),
  );
  expect(judgedCount).toBeGreaterThan(0); // of 100
});
