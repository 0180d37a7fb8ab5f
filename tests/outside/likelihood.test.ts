/**
 * Intervals of ratios against published worked examples. Values of the two are from memory of the books
 * named; they are recomputed by their printed formula beside each.
 */
import { describe, expect, test } from 'vitest';
import { ratioOf, tellsOf } from '../../src/lib/number/likelihood.ts';

describe('ratio of two shares by the log method', () => {
  // Agresti, Categorical Data Analysis: heart attacks of 11034 on placebo (189) and 11037 on aspirin
  // (104): relative risk 1.82, 95 % interval 1.43 to 2.31
  test('aspirin and heart attacks', () => {
    const { value, interval } = ratioOf(189, 11034, 104, 11037)!;
    expect(value).toBeCloseTo(1.82, 2);
    expect(interval.low).toBeCloseTo(1.43, 2);
    expect(interval.high).toBeCloseTo(2.31, 2);
  });

  // Altman & Bland, BMJ 1994;308:1552: liver scan against pathology, 231 and 27 with, 32 and 54 without
  // disease: sensitivity 0.90, specificity 0.63; Deeks & Altman, BMJ 2004;329:168: ratios of such a table
  test('liver scan: sensitivity, specificity and the ratios they give', () => {
    const { sensitivity, specificity, positive, negative } = tellsOf({
      truePositive: 231,
      falseNegative: 27,
      falsePositive: 32,
      trueNegative: 54,
    });
    expect(sensitivity!.value).toBeCloseTo(0.9, 2);
    expect(specificity!.value).toBeCloseTo(0.63, 2);
    expect(positive!.value).toBeCloseTo(sensitivity!.value / (1 - specificity!.value), 12);
    expect(negative!.value).toBeCloseTo((1 - sensitivity!.value) / specificity!.value, 12);
    expect(positive!.interval.low).toBeLessThan(positive!.value);
    expect(positive!.interval.high).toBeGreaterThan(positive!.value);
  });

  // Romeo et al. 2011, abstract: complete forward parachute at 12 months and walking, 67/6/4/63:
  // sensitivity 91.8, specificity 94.0
  test('forward parachute at 12 months', () => {
    const { sensitivity, specificity, positive } = tellsOf({
      truePositive: 67,
      falseNegative: 6,
      falsePositive: 4,
      trueNegative: 63,
    });
    expect(sensitivity!.value * 100).toBeCloseTo(91.8, 1);
    expect(specificity!.value * 100).toBeCloseTo(94, 1);
    expect(positive!.value).toBeCloseTo(15.4, 1);
  });

  test('an empty cell has no ratio rather than a wrong interval', () => {
    const { positive, sensitivity } = tellsOf({
      truePositive: 10,
      falseNegative: 2,
      falsePositive: 0,
      trueNegative: 20,
    });
    expect(positive).toBeUndefined();
    expect(sensitivity!.interval.high).toBeLessThan(1);
  });
});
