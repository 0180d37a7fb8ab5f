/** Blocks on sheets: arithmetic of our own, checked by its properties. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fallOf,
  firstWithin,
  flowing,
  TOGETHER,
  type Block,
} from '../../src/lib/handout/sheets.ts';

const ROOM = 100;
const block = fc.record({ height: fc.integer({ min: 1, max: ROOM }), keeps: fc.boolean() });
const blocks = fc.array(block, { minLength: 1, maxLength: 30 });
const of = (...heights: number[]): Block[] => heights.map((height) => ({ height, keeps: false }));

describe('blocks on sheets', () => {
  it('fills a sheet to its last line, then begins another', () => {
    expect(fallOf(of(60, 40), ROOM)).toEqual({ sheets: 1, rest: 0 });
    expect(fallOf(of(60, 41), ROOM)).toEqual({ sheets: 2, rest: 59 });
    expect(fallOf([], ROOM)).toEqual({ sheets: 1, rest: ROOM });
  });

  it('a heading goes with what it heads', () => {
    const [first, heading, text] = of(70, 20, 20) as [Block, Block, Block];
    expect(fallOf([first, { ...heading, keeps: true }, text], ROOM)).toEqual({
      sheets: 2,
      rest: 60,
    });
  });

  it('what is taller than a sheet runs over', () => {
    expect(fallOf(of(250, 50), ROOM)).toEqual({ sheets: 3, rest: 0 });
    expect(fallOf(of(10, 200), ROOM)).toEqual({ sheets: 3, rest: 0 });
  });

  it('takes no fewer sheets than the letters fill, and no more than two to each that is filled', () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: ROOM }), { minLength: 1 }), (heights) => {
        const all = heights.reduce((sum, height) => sum + height, 0);
        const { sheets, rest } = fallOf(of(...heights), ROOM);
        expect(sheets).toBeGreaterThanOrEqual(Math.ceil(all / ROOM));
        expect(sheets).toBeLessThanOrEqual(Math.ceil((2 * all) / ROOM));
        expect(rest).toBeGreaterThanOrEqual(0);
        expect(rest).toBeLessThan(ROOM);
      }),
    ));

  it('one more block never takes fewer sheets', () =>
    fc.assert(
      fc.property(blocks, block, (some, more) => {
        expect(fallOf([...some, more], ROOM).sheets).toBeGreaterThanOrEqual(
          fallOf(some, ROOM).sheets,
        );
      }),
    ));
});

describe('a text that may be torn', () => {
  it('is as high as it was, and no line is left alone', () =>
    fc.assert(
      fc.property(fc.nat({ max: 40 }), fc.nat({ max: 30 }), (lines, heading) => {
        const parts = flowing(heading + 10 * lines, 10, lines);
        expect(parts.reduce((sum, { height }) => sum + height, 0)).toBe(heading + 10 * lines);
        expect(parts.at(-1)!.height).toBeGreaterThanOrEqual(Math.min(lines, TOGETHER) * 10);
        expect(parts[0]!.height).toBeGreaterThanOrEqual(heading + Math.min(lines, TOGETHER) * 10);
      }),
    ));

  it('fills what a whole block would leave empty', () => {
    const lead = of(70);
    expect(fallOf([...lead, ...of(60)], ROOM)).toEqual({ sheets: 2, rest: 40 });
    expect(fallOf([...lead, ...flowing(60, 10, 6)], ROOM)).toEqual({ sheets: 2, rest: 70 });
  });
});

describe('the first layout within so many sheets', () => {
  const lay = (size: number) => fallOf(of(size, size), ROOM);

  it('is the first that does, and the last where none does', () => {
    expect(firstWithin([90, 60, 50, 40], 1, lay)).toEqual({ layout: 50, fall: lay(50) });
    expect(firstWithin([90, 60], 1, lay)).toEqual({ layout: 60, fall: lay(60) });
    expect(firstWithin([90, 60], 2, lay).layout).toBe(90);
  });
});
