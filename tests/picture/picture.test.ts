/**
 * What a picture to take away is made of. Colours as CSS Color 4 serialises them, escapes and
 * characters as XML 1.0 has them; transforms are checked against plain matrix arithmetic.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paintOf } from '../../src/lib/picture/colour.ts';
import type { Drawn, Look, Matrix } from '../../src/lib/picture/drawn.ts';
import { flat, growthOf } from '../../src/lib/picture/flat.ts';
import { lettersNamed } from '../../src/lib/picture/letters.ts';
import { markup } from '../../src/lib/picture/node.ts';
import { sheet, type Wanted } from '../../src/lib/picture/sheet.ts';
import { roughMeasure } from '../../src/lib/chart/labels.ts';
import { citation } from '../../src/lib/words/en/takeaway.ts';

const LOOK: Look = {
  fill: 'rgb(47, 111, 126)',
  fillOpacity: 1,
  stroke: 'none',
  strokeOpacity: 1,
  strokeWidth: 1,
  cap: 'butt',
  join: 'miter',
  dashes: [],
  strokeFirst: false,
  fixedStroke: false,
};
const LINE: Look = { ...LOOK, fill: 'none', stroke: 'rgb(0, 0, 0)', strokeWidth: 2 };

describe('colours', () => {
  test.each([
    ['rgb(47, 111, 126)', '#2f6f7e', 1],
    ['rgba(180, 69, 31, 0.5)', '#b4451f', 0.5],
    ['color(srgb 0.2 0.4 1)', '#3366ff', 1],
    ['color(srgb 0 0.6 1 / 0.25)', '#0099ff', 0.25],
    ['none', 'none', 1],
  ])('%s', (computed, colour, alpha) => {
    expect(paintOf(computed)).toEqual({ colour, alpha });
  });

  test('a colour that cannot be read is no colour at all', () => {
    expect(() => paintOf('var(--tide)')).toThrow(RangeError);
    expect(() => paintOf('color-mix(in srgb, red, blue)')).toThrow(RangeError);
  });
});

describe('outlines that lie over each other', () => {
  const d = 'M0 0H10V10H0ZM5 5H15V15H5Z';
  const paths = (look: Look, union: boolean): unknown[] =>
    flat({ is: 'path', matrix: [1, 0, 0, 1, 0, 0], d, look, union });

  test('are laid each by itself where they are one shape: no program cuts a hole between them', () => {
    expect(paths(LOOK, true)).toHaveLength(2);
    // with a line beneath: that, and the two fills
    expect(paths({ ...LOOK, stroke: 'rgb(0, 0, 0)', strokeFirst: true }, true)).toHaveLength(3);
  });

  test('stay one where they are not, or would look otherwise laid apart', () => {
    expect(paths(LOOK, false)).toHaveLength(1);
    expect(paths({ ...LOOK, fillOpacity: 0.5 }, true)).toHaveLength(1);
    expect(paths({ ...LOOK, stroke: 'rgb(0, 0, 0)' }, true)).toHaveLength(1);
  });
});

describe('transforms are worked in', () => {
  const small = fc.integer({ min: -50, max: 50 }).map((n) => n / 10);
  test('every point of a path lands where the matrix leads it', () => {
    const matrix = fc.tuple(small, small, small, small, small, small);
    const points = fc.array(fc.tuple(fc.nat(99), fc.nat(99)), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(matrix, points, ([a, b, c, d, e, f], dots) => {
        const path = dots.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');
        const [node] = flat({ is: 'path', matrix: [a, b, c, d, e, f], d: path, look: LOOK });
        const found = svgPoints(String(node!.at!.d));
        dots.forEach(([x, y], i) => {
          expect(found[i]![0]).toBeCloseTo(a * x + c * y + e, 1);
          expect(found[i]![1]).toBeCloseTo(b * x + d * y + f, 1);
        });
      }),
    );
  });

  test('a stroke grows with an even transform and keeps its width where it is to', () => {
    const one = (look: Look, matrix: Matrix): unknown =>
      flat({ is: 'path', matrix, d: 'M0 0L10 10', look })[0]!.at!['stroke-width'];
    expect(one(LINE, [3, 0, 0, 3, 0, 0])).toBe(6);
    expect(one({ ...LINE, fixedStroke: true }, [3, 0, 0, 40, 0, 0])).toBe(2);
    expect(growthOf([0, 2, -2, 0, 5, 5])).toBeCloseTo(2);
    expect(growthOf([1, 0, 0, 2, 0, 0])).toBeUndefined();
  });

  test('a line of no length under a round pen becomes the dot that it shows', () => {
    const look: Look = { ...LINE, cap: 'round', strokeWidth: 9, fixedStroke: true };
    const nodes = flat({ is: 'path', matrix: [2, 0, 0, 30, 4, 0], d: 'M10 1h0M20 1h0', look });
    expect(nodes.map(({ tag, at }) => [tag, at!.cx, at!.cy, at!.r, at!.fill])).toEqual([
      ['circle', 24, 30, 4.5, '#000000'],
      ['circle', 44, 30, 4.5, '#000000'],
    ]);
  });

  test('a stroke that lies under its fill is laid first, by itself', () => {
    const look: Look = { ...LOOK, stroke: 'rgb(1, 2, 3)', strokeFirst: true };
    const nodes = flat({ is: 'path', matrix: [1, 0, 0, 1, 0, 0], d: 'M0 0L1 1', look });
    expect(nodes.map(({ at }) => [at!.fill, at!.stroke])).toEqual([
      ['none', '#010203'],
      ['#2f6f7e', undefined],
    ]);
  });
});

/** The points of a path that is made of M, L, H and V, large or small. */
function svgPoints(d: string): [number, number][] {
  let at: [number, number] = [0, 0];
  return [...d.matchAll(/([MLHVmlhv])([^MLHVmlhv]*)/g)].flatMap(([, command, rest]) => {
    const numbers = [...rest!.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(Number);
    const of = command!.toUpperCase();
    const base: [number, number] = command === of ? [0, 0] : at;
    const found: [number, number][] = [];
    if (of === 'H') found.push([base[0] + numbers[0]!, at[1]]);
    else if (of === 'V') found.push([at[0], base[1] + numbers[0]!]);
    else
      for (let i = 0; i < numbers.length; i += 2) {
        const from: [number, number] = command === of ? [0, 0] : (found.at(-1) ?? at);
        found.push([from[0] + numbers[i]!, from[1] + numbers[i + 1]!]);
      }
    at = found.at(-1) ?? at;
    return found;
  });
}

describe('the file', () => {
  const text: Drawn = {
    is: 'text',
    matrix: [1, 0, 0, 1, 5, 5],
    place: { x: 10, y: 20 },
    text: 'a < b & "c"',
    look: LOOK,
    letters: { family: "'Source Sans 3'", sizePx: 12, weight: '400', italic: false, anchor: 'end' },
  };
  const wanted: Wanted = {
    drawing: { widthPx: 200, heightPx: 100, drawn: [text], definitions: [] },
    around: { title: 'A title', legend: 'A legend', citation: citation(['One', 'Two', 'One']) },
    label: 'A title',
    ground: '#ffffff',
    ink: '#000000',
    soft: '#555555',
    bytes: { sans: 'QUJD', serif: 'REVG' },
    measure: roughMeasure,
  };

  test('it holds the title, the legend, the sources each once, and the letters', () => {
    const { svg } = sheet(wanted);
    for (const said of ['A title', 'A legend', 'base64,QUJD', 'base64,REVG'])
      expect(svg).toContain(said);
    expect(citation(['Two', 'One', 'Two'])).toMatch(/^After: One; Two\. .*not a diagnosis\.$/);
    expect(svg).toContain('a &lt; b &amp; &quot;c&quot;');
  });

  test('nothing in it leads elsewhere', () => {
    const { svg } = sheet(wanted);
    expect(svg).not.toMatch(/var\(|class=|href=/);
    expect(svg.match(/https?:[^"'\s]*/g)).toEqual(['http://www.w3.org/2000/svg']);
  });

  test('with its letters only named, it is the same but for them', () => {
    const { svg } = sheet(wanted);
    const named = lettersNamed(svg);
    expect(named).not.toMatch(/<style|base64/);
    expect(named).toContain("font-family=\"'Source Sans 3'");
    expect(named.length).toBe(svg.length - /<style>.*<\/style>/.exec(svg)![0].length);
  });

  test('by itself a drawing keeps its size, its ground and only its own letters', () => {
    const bare = sheet({ ...wanted, around: undefined, ground: undefined });
    expect([bare.widthPx, bare.heightPx]).toEqual([200, 100]);
    expect(bare.svg).not.toContain('REVG');
    expect(bare.svg).not.toContain('<rect');
  });

  test('any text comes out as one well-formed element', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (words) => {
        const said = markup({ tag: 'text', at: { 'aria-label': words }, text: words });
        expect(said).toMatch(/^<text aria-label="[^"<>]*"(\/>|>[^<>]*<\/text>)$/s);
        expect(said.replaceAll(/&(amp|lt|gt|quot);/g, '')).not.toContain('&');
      }),
    );
  });
});
