import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MAX_LABEL } from '../../src/lib/case/shape.ts';
import { en } from '../../src/lib/words/en.ts';

const { copyLabel, asksWords, openWords, foundWords } = en.children;

describe('the label of a copy', () => {
  it('is free, and fits what a label may hold', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), fc.nat(12), (label, copies) => {
        const taken = new Set([label]);
        for (let made = 0; made <= copies; made++) {
          const copy = copyLabel(label, taken, MAX_LABEL);
          expect(taken.has(copy)).toBe(false);
          expect(copy.length).toBeLessThanOrEqual(MAX_LABEL);
          taken.add(copy);
        }
      }),
    );
    expect(copyLabel('Tern', new Set(['Tern', 'Tern copy']), MAX_LABEL)).toBe('Tern copy 2');
    expect(copyLabel('a'.repeat(80), new Set(), MAX_LABEL)).toBe(`${'a'.repeat(75)} copy`);
  });
});

describe('what is open, in words', () => {
  it('counts', () => {
    expect(asksWords({ discuss: 2, watch: 1 })).toBe('2 to discuss, 1 to recheck');
    expect(asksWords({ discuss: 0, watch: 0 })).toBe('nothing flagged');
    expect([0, 1, 4].map(openWords)).toEqual([
      'no open question',
      '1 open question',
      '4 open questions',
    ]);
    expect(foundWords(3, 500)).toBe('3 of 500 children');
    expect(foundWords(1, 1)).toBe('1 child');
  });
});
