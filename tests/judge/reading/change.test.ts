/** Dates of what has changed in a child, and of what is still to change. */
import { describe, expect, test } from 'vitest';
import { Inferred, seen } from '../../../src/lib/judge/reading/course.ts';
import { Prior, type EventPrior } from '../../../src/lib/judge/reading/prior.ts';

const uniform = (from: number, to: number): EventPrior => ({
  pieces: [{ from, to, weight: 1 }],
  dated: true,
});

describe('what is still to change', () => {
  const prior = new Prior(uniform(300, 310), uniform(310, 320));

  test('what is there goes by half and nine tenths of what is left', () => {
    const change = new Inferred(prior, [], 0).change(315)!;
    // equally likely there and gone: there asks for more of the two
    expect(change.event).toBe('integrates');
    expect(change.halfBy).toBeCloseTo(317.5, 3);
    expect(change.nineInTenBy).toBeCloseTo(319.5, 3);
  });

  test('what is awaited appears in what is left of its window', () => {
    const change = new Inferred(prior, [], 0).change(302)!;
    expect(change.event).toBe('appears');
    expect(change.halfBy).toBeCloseTo(306, 3);
  });

  test.each([
    [0.1, null],
    [0.09, expect.any(Number)],
  ])('with never at %f nine in ten by: %s', (never, date) => {
    const lasting = new Prior(uniform(300, 310), {
      dated: true,
      pieces: [
        { from: 400, to: 410, weight: 1 - never },
        { from: Infinity, to: Infinity, weight: never },
      ],
    });
    const change = new Inferred(lasting, [seen(350, true, 0.1)], 0).change(350)!;
    expect(change.nineInTenBy).toEqual(date);
    expect(change.halfBy).not.toBeNull();
  });

  test('a date may be never: with half and more of never the median is', () => {
    const rarely = new Prior(uniform(300, 310), {
      dated: true,
      pieces: [
        { from: 400, to: 410, weight: 0.4 },
        { from: Infinity, to: Infinity, weight: 0.6 },
      ],
    });
    const { low, median, high } = new Inferred(rarely, [], 0).dates('integrates');
    expect(low).toBeCloseTo(401.25, 3);
    expect([median, high]).toEqual([Infinity, Infinity]);
  });

  test('with never at a tenth or more nine in ten have no date', () => {
    const half = { from: Infinity, to: Infinity, weight: 0.5 };
    const lifelong = new Prior(uniform(300, 310), {
      dated: true,
      pieces: [{ from: 400, to: 410, weight: 0.5 }, half],
    });
    const change = new Inferred(lifelong, [seen(350, true, 0.1)], 0).change(350)!;
    expect(change.never).toBeCloseTo(0.5, 12);
    expect(change.nineInTenBy).toBeNull();
    expect(change.halfBy).toBeCloseTo(410, 3);
  });
});
