/**
 * What the hall shows, held against published rules.
 * Legibility: text height at least 1/250 of the reading distance and reading from at most six picture
 * heights (projection guidance, both read), so 6/250 = 0.024 of the height; 1/40 is the next whole
 * fraction above.
 * Contrast: the formula of WCAG 2.2 (relative luminance; from memory), and 7:1 (SC 1.4.6).
 * Colour vision: a general-purpose library (a projection in cone space, on values as they are coded),
 * and beside it the matrices of Machado, Oliveira & Fernandes 2009, severity 1 (from memory), on linear
 * light. The two differ in method, so what holds under both does not hang on either.
 */
import { simulate, type Deficiency } from '@bjornlu/colorblind';
import { lab, rgb } from 'd3';
import { describe, expect, test } from 'vitest';
import {
  CAPITAL,
  GROUNDS,
  leastSizePx,
  LEAST_LETTER,
  LETTERS,
  STAGE_INK,
} from '../../src/lib/lecture/talkInk.ts';

const linear = (channel: number): number => {
  const c = channel / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
};

const luminance = (colour: string): number => {
  const { r, g, b } = rgb(colour);
  return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
};

const contrast = (a: string, b: string): number => {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (high + 0.05) / (low + 0.05);
};

/** Machado, Oliveira & Fernandes 2009, severity 1, on linear light. */
const MACHADO: Record<(typeof COMMON)[number], readonly (readonly number[])[]> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};
const COMMON = ['protanopia', 'deuteranopia', 'tritanopia'] as const satisfies Deficiency[];

const seenBy = (colour: string, as: (typeof COMMON)[number]): string => {
  const { r, g, b } = rgb(colour);
  const seen = simulate({ r, g, b }, as);
  return rgb(seen.r, seen.g, seen.b).formatHex();
};

const byMachado = (colour: string, as: (typeof COMMON)[number]): string => {
  const { r, g, b } = rgb(colour);
  const light = [linear(r), linear(g), linear(b)];
  const [x, y, z] = MACHADO[as].map((row) => {
    const c = Math.min(
      1,
      Math.max(
        0,
        row.reduce((sum, k, i) => sum + k * light[i]!, 0),
      ),
    );
    return 255 * (c <= 0.0031308 ? 12.92 * c : 1.055 * c ** (1 / 2.4) - 0.055);
  }) as [number, number, number];
  return rgb(x, y, z).formatHex();
};

/** How far two colours are apart, CIE 1976. */
const apart = (a: string, b: string): number => {
  const [x, y] = [lab(a), lab(b)];
  return Math.hypot(x.l - y.l, x.a - y.a, x.b - y.b);
};

describe('the legibility rule', () => {
  test('1/40 of the height is more than six heights away asks for, and a capital keeps to it', () => {
    expect(LEAST_LETTER).toBeGreaterThan(6 / 250);
    for (const height of [720, 768, 1080, 2160])
      expect(leastSizePx(height) * CAPITAL).toBeGreaterThanOrEqual(height / 40);
  });
});

describe('contrast', () => {
  // computed vectors of the formula; #959595 is 2.996 before rounding
  test.each([
    ['#000000', 21],
    ['#767676', 4.54],
    ['#777777', 4.48],
    ['#949494', 3.03],
    ['#959595', 3],
  ])('%s on white is %s', (colour, ratio) => {
    expect(contrast(colour, '#ffffff')).toBeCloseTo(ratio, 2);
  });

  describe.each(['light', 'dark'] as const)('in the %s hall', (scheme) => {
    const tokens = STAGE_INK[scheme];
    const pairs = LETTERS.flatMap((letter) => GROUNDS.map((ground) => [letter, ground] as const));

    test.each(pairs)('%s on %s is at least 7:1', (letter, ground) => {
      expect(contrast(tokens[letter], tokens[ground])).toBeGreaterThanOrEqual(7);
    });

    test('lines of the ridges and edges are at least 3:1 (WCAG 2.2, 1.4.11, from memory)', () => {
      for (const ground of GROUNDS)
        for (const line of ['tide', 'edge', 'signal', 'ink'] as const)
          expect(contrast(tokens[line], tokens[ground])).toBeGreaterThanOrEqual(3);
    });

    test.each(COMMON)('letters keep 7:1 and hues stay apart under %s', (as) => {
      for (const simulated of [seenBy, byMachado]) {
        for (const [letter, ground] of pairs)
          expect(
            contrast(simulated(tokens[letter], as), simulated(tokens[ground], as)),
          ).toBeGreaterThanOrEqual(7);
        expect(apart(simulated(tokens.tide, as), simulated(tokens.signal, as))).toBeGreaterThan(15);
      }
    });
  });
});

describe('the simulation', () => {
  test.each(COMMON)('of %s leaves greys grey', (as) => {
    for (const grey of ['#000000', '#808080', '#ffffff'])
      expect(apart(seenBy(grey, as), grey)).toBeLessThan(3);
  });

  test('takes red and green together for the two red-green deficiencies, and not for the third', () => {
    const [red, green] = ['#b03020', '#5a7a10'];
    for (const as of ['protanopia', 'deuteranopia'] as const) {
      expect(apart(seenBy(red, as), seenBy(green, as))).toBeLessThan(apart(red, green) / 2);
      expect(apart(byMachado(red, as), byMachado(green, as))).toBeLessThan(apart(red, green) / 2);
    }
    expect(apart(seenBy(red, 'tritanopia'), seenBy(green, 'tritanopia'))).toBeGreaterThan(
      apart(red, green) / 2,
    );
  });

  test.each(COMMON)('of %s comes near the published matrices on the colours of the hall', (as) => {
    for (const tokens of Object.values(STAGE_INK))
      for (const colour of Object.values(tokens))
        expect(apart(seenBy(colour, as), byMachado(colour, as))).toBeLessThan(15);
  });
});
