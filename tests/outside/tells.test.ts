/**
 * How much an answer would tell, against figures worked out by hand and against integration by brute
 * force. The entropy of a yes-or-no answer is Shannon's (1948, "A mathematical theory of communication",
 * section 6): 1 bit at one half, 2 - 3/4 log2 3 at one quarter, 0 where it is sure.
 */
import jstat from 'jstat';
import { describe, expect, test } from 'vitest';
import { fromMonths, toAxisDay } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Claim, SourceData } from '../../src/lib/atlas/types.ts';
import { compile } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { entropy, linesForAge } from '../../src/lib/judge/plan.ts';
import { windowsOf, type Window } from '../../src/lib/judge/window.ts';

const QUARTER = 2 - 0.75 * Math.log2(3);

describe('the entropy of an answer, as published', () => {
  test.each([
    [0, 0],
    [0.25, QUARTER],
    [0.5, 1],
    [0.75, QUARTER],
    [1, 0],
  ])('an answer expected with %f tells %f bits', (p, bits) => {
    expect(entropy(p)).toBeCloseTo(bits, 12);
  });
});

/** Invented sources that let the Moro go over a span of months; there from birth. */
function invented(...spans: readonly (readonly [number, number])[]) {
  const claims = spans.map(([low, high], i) => {
    const claim: Claim = {
      reflex: 'moro',
      role: 'window',
      basis: 'memory',
      appearsStatus: 'implied',
      integratesStatus: 'given',
      integrates: { asPrinted: `${low}-${high} months`, unit: 'mo', low, high },
    };
    const source = { id: `invented-${i}`, claims: [claim] } as unknown as SourceData;
    return { ...claim, source, family: source.id, judgedByDefault: true };
  });
  return new Map([['moro', compile(windowsOf(claims))]]);
}

const tells = (sheet: ReturnType<typeof invented>, months: number, sdDays: number): number => {
  const { lines, rest } = linesForAge(fromMonths(months), sdDays, { atlas: ATLAS, sheet });
  return [...lines, ...rest].find(({ reflex }) => reflex.id === 'moro')!.tells;
};

describe('worked out by hand', () => {
  const two = invented([4, 6], [5, 7]);

  test('at 5.5 months one source leaves a quarter, the other three: an even chance', () => {
    expect(tells(two, 5.5, 0)).toBeCloseTo(1, 10);
  });

  test('at 6 months one leaves nothing, the other a half: a quarter', () => {
    expect(tells(two, 6, 0)).toBeCloseTo(QUARTER, 10);
  });

  test('before any source lets it go, and after the last has, it tells nothing', () => {
    expect(tells(two, 3, 0)).toBe(0);
    expect(tells(two, 8, 0)).toBe(0);
  });

  test('doubt in the dates lies even about the middle of a span, so an even chance stays one', () => {
    for (const sd of [0.5, 8, 15.3]) expect(tells(invented([4, 6]), 5, sd)).toBeCloseTo(1, 10);
  });

  test('doubt opens what an exact age would close', () => {
    expect(tells(two, 7.2, 0)).toBe(0);
    expect(tells(two, 7.2, 15.3)).toBeGreaterThan(0.1);
  });
});

/** Whether a window speaks at an age, and its expectation, from the words of the rule. */
function at(w: Window, x: number): { speaks: boolean; expectation: number } {
  if (x < w.speaksFrom || x >= w.speaksTo) return { speaks: false, expectation: 0 };
  const up = w.appearsTo > w.appearsFrom ? (x - w.appearsFrom) / (w.appearsTo - w.appearsFrom) : 1;
  const down =
    w.integratesTo > w.integratesFrom
      ? (w.integratesTo - x) / (w.integratesTo - w.integratesFrom)
      : 0;
  const expectation =
    x < w.appearsFrom
      ? 0
      : x < w.appearsTo
        ? up
        : x < w.integratesFrom
          ? 1
          : x < w.integratesTo
            ? down
            : 0;
  return { speaks: true, expectation };
}

/** The mean expectation over sources and ages, summed over many slices of the normal distribution. */
function bruteMean(windows: readonly Window[], age: number, sd: number): number {
  const SLICES = 4000;
  const sums = windows.map((w) => {
    let spoken = 0;
    let expected = 0;
    for (let i = 0; i < SLICES; i++) {
      const x = age - 8 * sd + ((i + 0.5) * 16 * sd) / SLICES;
      const mass = (jstat.normal.pdf(x, age, sd) * 16 * sd) / SLICES;
      const { speaks, expectation } = at(w, x);
      if (speaks) spoken += mass;
      if (speaks) expected += mass * expectation;
    }
    return { family: w.claim.family, spoken, expected };
  });
  let speaking = 0;
  let mean = 0;
  for (const one of sums) {
    const ofVoice = sums.filter(({ family }) => family === one.family);
    const voice = ofVoice.length > 1 ? ofVoice.reduce((sum, o) => sum + o.spoken, 0) : 1;
    speaking += one.spoken / Math.max(1, voice);
    mean += one.expected / Math.max(1, voice);
  }
  return mean / speaking;
}

test('every reflex of the atlas tells what brute force says, at ages in doubt', () => {
  const sheet = sheetOf(ATLAS);
  let compared = 0;
  for (const age of [300, 371, 442.5, 530, 655])
    for (const sd of [3.6, 15.3]) {
      const { lines, rest } = linesForAge(toAxisDay(age), sd, { atlas: ATLAS, sheet });
      for (const line of [...lines, ...rest]) {
        if (line.why.some(({ code }) => code === 'silent')) continue;
        compared++;
        const p = bruteMean(sheet.get(line.reflex.id)!.windows, age, sd);
        expect(line.tells, `${line.reflex.id} at ${age}`).toBeCloseTo(entropy(p), 3);
      }
    }
  expect(compared).toBeGreaterThan(300);
});
