/** Evidence of the atlas against the figures of its published sources, worked out anew. */
import { describe, expect, test } from 'vitest';
import { ATLAS_PARTS } from '../../src/lib/atlas/atlas.ts';
import { ACCURACY } from '../../src/lib/atlas/evidence/accuracy.ts';
import { UNLIKE } from '../../src/lib/atlas/evidence/unlikeCounts.ts';

describe('Romeo et al. 2011 (abstract): 140 infants with lesions, forward parachute at 12 months', () => {
  // printed: complete in 71, incomplete in 29, absent in 40; 73 walked, 67 with complete and 6 with incomplete
  const row = ACCURACY.find(
    ({ source, truePositive }) => source === 'romeo-2011' && truePositive !== null,
  )!;

  test('the four cells follow from the printed margins', () => {
    expect(row.reflex).toBe('protective-forward');
    expect([row.truePositive, row.falsePositive, row.falseNegative, row.trueNegative]).toEqual([
      67,
      71 - 67,
      73 - 67,
      140 - 71 - 6,
    ]);
  });

  test('63 of 69 without a complete response did not walk; the rates follow from the cells', () => {
    expect(29 + 40 - 6).toBe(row.trueNegative);
    expect(row.sensitivity!.percent).toBeCloseTo((67 / 73) * 100, 1);
    expect(row.specificity!.percent).toBeCloseTo((63 / 67) * 100, 1);
  });
});

test('Futagi et al. 1999 (abstract): outcomes of 93 infants without a plantar grasp add up', () => {
  // printed: cerebral palsy 75 (69 spastic, 4 + 1 + 1 others), 7, 2, 1 and 8 normal
  const row = ACCURACY.find(({ source }) => source === 'futagi-suzuki-1999')!;
  expect(69 + 4 + 1 + 1).toBe(75);
  expect(row.truePositive).toBe(75 + 7 + 2 + 1);
  expect(row.truePositive! + row.falsePositive!).toBe(93);
});

describe('unlike plantar responses of the two feet', () => {
  const feet = UNLIKE.filter(
    ({ reflex, kind }) => reflex === 'plantar-response' && kind === 'unlike',
  );

  test('Journal of Paediatrics and Child Health 2003 (abstract): 5.4 % of observations of newborns', () => {
    expect(feet.find(({ low }) => low === 0)).toMatchObject({ percent: 5.4, n: 256 });
  });

  test('Kumhar, Dua and Gupta 2002 (abstract): 40.3 % at 6.1-9 months, the most of all ages', () => {
    const most = feet.reduce((a, b) => (b.percent! > a.percent! ? b : a));
    expect(most).toMatchObject({ source: 'kumhar-2002', low: 6.1, high: 9, percent: 40.3, n: 354 });
  });

  test('Kumhar 2002: both extensor, both flexor and unlike leave little for both equivocal', () => {
    const counts = ATLAS_PARTS.sources.find(({ id }) => id === 'kumhar-2002')!.counts;
    for (const { low, percent } of feet.filter(({ source }) => source === 'kumhar-2002')) {
      const both = counts.filter((count) => count.low === low);
      expect(both).toHaveLength(2);
      const sum = both.reduce((total, count) => total + count.percent!, percent!);
      // the youngest group adds up to 100.4 as printed, which the citation's note says
      expect(sum).toBeLessThanOrEqual(100.45);
      expect(sum).toBeGreaterThan(98);
    }
  });

  test('Kumhar 2002: the four groups are the 1281 infants of the study', () => {
    const sizes = feet.filter(({ source }) => source === 'kumhar-2002').map(({ n }) => n!);
    expect(sizes.reduce((a, b) => a + b)).toBe(1281);
  });
});

test('newborn plantar responses, 2003 (abstract): the shares of 597 observations leave none out', () => {
  const { counts } = ATLAS_PARTS.sources.find(({ id }) => id === 'gupta-2003')!;
  const both = counts.filter(({ measureId }) => measureId.endsWith('both-feet'));
  const unlike = UNLIKE.find(({ source }) => source === 'gupta-2003')!.percent!;
  expect(both).toHaveLength(3);
  expect(both.reduce((sum, { percent }) => sum + percent!, unlike)).toBeCloseTo(99.8, 6);
  const over = counts.filter(({ measureId }) => measureId.endsWith('overall'));
  expect(over.reduce((sum, { percent }) => sum + percent!, 0)).toBeCloseTo(100, 6);
});
