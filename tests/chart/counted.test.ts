import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { countPoints, isNear } from '../../src/lib/chart/counted.ts';
import { curvesOf, drawCounts } from '../../src/lib/chart/countPaths.ts';
import { chartData } from '../../src/lib/chart/data.ts';
import { readLane } from '../../src/lib/chart/layout.ts';
import { fromMonths } from '../../src/lib/age/axis.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { en } from '../../src/lib/words/en.ts';

const MONTH = 30.4375;
const of = (reflex: string) => countPoints(ATLAS.counts.get(reflex)!);

describe('counts of infants on a lane', () => {
  // Shapiro et al. 1981, abstract: 249 infants, 89 % at 2 months, 42 at 6, 8 at 12
  test('the asymmetrical tonic neck response at 2, 6 and 12 months, with Wilson’s interval', () => {
    const points = of('atnr').filter(({ count }) => count.source.id === 'shapiro-1981');
    expect(points.map(({ share }) => share)).toEqual([0.89, 0.42, 0.08]);
    expect(points.map(({ day }) => Math.round((day - 280) / MONTH))).toEqual([2, 6, 12]);
    expect(points[1]!.interval!.low).toBeCloseTo(0.36, 2);
    expect(points[1]!.interval!.high).toBeCloseTo(0.482, 2);
  });

  test('a curve through four ages of one measure only: the plantar response', () => {
    const curved = [...ATLAS.reflexes.keys()].filter((id) => curvesOf(of(id)).length > 0);
    expect(curved).toEqual(['plantar-response']);
  });

  test('patients, other measures and unprinted shares are no points', () => {
    for (const id of ATLAS.reflexes.keys())
      for (const { count, share, interval } of of(id)) {
        expect(count.role).toBe('count');
        expect(count.answer).not.toBe('other');
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
        if (interval) {
          expect(interval.low).toBeLessThanOrEqual(share + 1e-9);
          expect(interval.high).toBeGreaterThanOrEqual(share - 1e-9);
        }
      }
    expect(of('protective-forward').some(({ count }) => count.source.id === 'romeo-2011')).toBe(
      false,
    );
  });

  test('one dot a point, in the lane’s own scale', () => {
    const { points } = drawCounts(ATLAS.counts.get('atnr')!);
    for (const { point, dot } of points)
      expect(dot).toBe(`M${point.day.toFixed(3)} ${(-point.share).toFixed(3)}h0`);
  });

  // Shapiro et al. 1981, abstract; the interval by Wilson's formula (1927), worked out by hand
  test('a point says who counted what: 42 % of 249 at 6 months, 36 to 48', () => {
    const [point] = of('atnr').filter(({ share }) => share === 0.42);
    expect(en.chart.chartWords(ATLAS).count(point!)).toBe(
      `${point!.count.source.short}, 6 months: 42 % of 249 (36 to 48 %)`,
    );
    expect(isNear(point!, fromMonths(5))).toBe(true);
    expect(isNear(point!, fromMonths(4.9))).toBe(false);
  });

  test('an opened lane says its counts: all to one who hears it, those near the age where pointed at', () => {
    const [lane] = chartData(ATLAS, sheetOf(ATLAS), { reflexes: ['atnr'], sequences: [] }).lanes;
    const words = en.chart.chartWords(ATLAS);
    const opened = readLane(lane!, fromMonths(6), true);
    for (const share of ['89 %', '42 %', '8 %']) expect(words.lane(opened)).toContain(share);
    const [, counted] = words.readout(opened).lines;
    expect(counted).toContain('42 % of 249');
    expect(counted).not.toContain('89 %');
    const closed = readLane(lane!, fromMonths(6));
    expect(words.lane(closed)).not.toContain('counted');
    expect(words.readout(closed).lines).toHaveLength(1);
  });
});
