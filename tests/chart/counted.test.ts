import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { countPoints, curvesOf, drawCounts } from '../../src/lib/chart/counted.ts';

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
});
