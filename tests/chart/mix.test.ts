/** The layout between two: its ends are the two, and everything in it lies between them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromGestationWeeks, fromMonths, toAxisDay } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { chartData } from '../../src/lib/chart/data.ts';
import { roughMeasure } from '../../src/lib/chart/labels.ts';
import { layout } from '../../src/lib/chart/layout.ts';
import { mixLayout, mixRidge, type Standing } from '../../src/lib/chart/mix.ts';
import { heightAt } from '../../src/lib/chart/ridge.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { english } from './english.ts';
import { BIRTH } from './kestrel.ts';

const words = english(ATLAS, BIRTH.due, BIRTH.born);
const SHEETS = [
  sheetOf(ATLAS),
  sheetOf(ATLAS, new Set(['nelson', 'bates'])),
  sheetOf(ATLAS, new Set(['osullivan-handout'])),
];

const stand = (
  lanes: readonly string[],
  from: number,
  months: number,
  sheet: number,
  opened: readonly string[],
): Standing => {
  const data = chartData(ATLAS, SHEETS[sheet]!, { reflexes: lanes, sequences: [] });
  const view = {
    range: { from: fromGestationWeeks(from), to: fromMonths(months) },
    age: toAxisDay((fromGestationWeeks(from) + fromMonths(months)) / 2),
    order: lanes,
    opened: new Set(opened),
    strip: false,
  };
  const room = { widthPx: 1280, heightPx: 600, beside: true };
  return { data, view, placed: layout(data, view, room, 2, words, roughMeasure) };
};

const ids = fc.shuffledSubarray(['moro', 'atnr', 'stnr', 'landau', 'rooting', 'palmar-grasp'], {
  minLength: 1,
});
const standing = ids.chain((lanes) =>
  fc
    .tuple(
      fc.integer({ min: 20, max: 36 }),
      fc.integer({ min: 2, max: 24 }),
      fc.nat(2),
      fc.subarray(lanes, { maxLength: 1 }),
    )
    .map(([from, months, sheet, opened]) => stand(lanes, from, months, sheet, opened)),
);
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

const isBetween = (value: number, a: number, b: number): boolean =>
  value >= Math.min(a, b) - 1e-6 && value <= Math.max(a, b) + 1e-6;

describe('a mix of two layouts', () => {
  test('at its ends is the one and the other', () => {
    fc.assert(
      fc.property(standing, standing, (a, b) => {
        expect(mixLayout(a, b, 0, words, roughMeasure)).toBe(a);
        expect(mixLayout(a, b, 1, words, roughMeasure)).toBe(b);
      }),
      { numRuns: 20 },
    );
  });

  test('has every lane of both: those that stay lie between, the others fade in their place', () => {
    fc.assert(
      fc.property(standing, standing, share, (a, b, at) => {
        const mixed = mixLayout(a, b, at, words, roughMeasure);
        const { lanes } = mixed.placed.lanes;
        const [first, second] = [a.placed.lanes.lanes, b.placed.lanes.lanes];
        expect(new Set(lanes.keys())).toEqual(new Set([...first.keys(), ...second.keys()]));
        expect(mixed.placed.drawn.map((d) => d.id).sort()).toEqual([...lanes.keys()].sort());
        for (const [id, lane] of lanes) {
          const [one, two] = [first.get(id), second.get(id)];
          if (one && two) {
            expect(lane.opacity).toBeUndefined();
            for (const key of ['top', 'base', 'ridgePx', 'nameY', 'height'] as const)
              expect(isBetween(lane[key], one[key], two[key])).toBe(true);
          } else {
            expect(lane.base).toBe((one ?? two)!.base);
            expect(lane.opacity).toBeCloseTo(one ? 1 - at : at, 9);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('lies between in range, age and every length', () => {
    fc.assert(
      fc.property(standing, standing, share, (a, b, at) => {
        const { view, placed } = mixLayout(a, b, at, words, roughMeasure);
        expect(isBetween(view.range.from, a.view.range.from, b.view.range.from)).toBe(true);
        expect(isBetween(view.range.to, a.view.range.to, b.view.range.to)).toBe(true);
        expect(isBetween(view.age, a.view.age, b.view.age)).toBe(true);
        for (const key of ['left', 'pitch', 'ridge', 'small', 'name'] as const)
          expect(isBetween(placed.sizes[key], a.placed.sizes[key], b.placed.sizes[key])).toBe(true);
        expect(placed.frame.scale.x(view.range.from)).toBeCloseTo(placed.sizes.left, 6);
      }),
      { numRuns: 60 },
    );
  });

  test('has ridges whose height at every day is mixed in that share', () => {
    const ridges = SHEETS.flatMap((sheet) =>
      chartData(ATLAS, sheet, { reflexes: ['moro', 'atnr', 'landau'] }).lanes.map((l) => l.ridge),
    );
    const ridge = fc.constantFrom(...ridges);
    fc.assert(
      fc.property(ridge, ridge, share, fc.integer({ min: 100, max: 1000 }), (a, b, at, whole) => {
        const day = whole + 0.37; // beside the corners, where a ridge may step
        const mixed = heightAt(mixRidge(a, b, at), day);
        expect(mixed).toBeCloseTo((1 - at) * heightAt(a, day) + at * heightAt(b, day), 9);
      }),
    );
  });
});
