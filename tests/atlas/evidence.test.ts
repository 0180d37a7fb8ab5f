/** The files of evidence: their ids, their sources, and figures that can be so. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { ACCURACY } from '../../src/lib/atlas/evidence/accuracy.ts';
import { AGREEMENT } from '../../src/lib/atlas/evidence/agreement.ts';
import { STATES } from '../../src/lib/atlas/evidence/states.ts';
import { UNLIKE } from '../../src/lib/atlas/evidence/unlikeCounts.ts';

const files = { ACCURACY, AGREEMENT, STATES, UNLIKE };

describe.each(Object.entries(files))('%s', (_, rows) => {
  test('names reflexes and sources of the atlas, and rows that were read', () => {
    expect(rows.length).toBeGreaterThan(0);
    for (const { reflex, source, basis } of rows) {
      expect(reflex === 'any-reflex' || ATLAS.reflexes.has(reflex), reflex).toBe(true);
      expect(ATLAS.sources.has(source), source).toBe(true);
      expect(ATLAS.sources.get(source)!.basis, source).toBe(basis);
    }
  });
});

describe('figures that can be so', () => {
  test('cells are whole numbers of children, rates are shares, and what is computed has its cells', () => {
    for (const row of ACCURACY) {
      const cells = [row.truePositive, row.falseNegative, row.falsePositive, row.trueNegative];
      for (const cell of cells) if (cell !== null) expect(Number.isInteger(cell)).toBe(true);
      const whole = cells.every((cell) => cell !== null);
      for (const rate of [row.sensitivity, row.specificity]) {
        if (!rate) continue;
        expect(rate.percent).toBeGreaterThanOrEqual(0);
        expect(rate.percent).toBeLessThanOrEqual(100);
        if (rate.computed) expect(whole, row.source).toBe(true);
      }
      const counted = cells.some((cell) => cell !== null) || row.sensitivity !== null;
      expect(row.certainty, `${row.source} ${row.sign}`).toBe(counted ? 'counted' : 'reported');
    }
  });

  test('a coefficient lies within -1 and 1, a share within 0 and 100, and a row says something', () => {
    for (const { value, measure, words, source } of AGREEMENT) {
      expect(value !== null || words !== undefined, source).toBe(true);
      if (!value) continue;
      expect(value.low).toBeLessThanOrEqual(value.high);
      expect(value.high).toBeLessThanOrEqual(measure === 'percent-agreement' ? 100 : 1);
    }
  });

  test('sides: shares and ages in order, and printed numbers give the printed share', () => {
    for (const { low, high, percent, n, of, hits, source } of UNLIKE) {
      expect(low).toBeLessThanOrEqual(high);
      if (percent !== null) expect(percent >= 0 && percent <= 100, source).toBe(true);
      if (hits !== undefined)
        expect((hits / (of?.number ?? n!)) * 100, source).toBeCloseTo(percent!, 1);
    }
  });
});
