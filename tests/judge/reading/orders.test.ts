/** Orders in one child, through the record. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../../src/lib/atlas/atlas.ts';
import { sheetOf } from '../../../src/lib/judge/judge.ts';
import { ChildReading, Priors } from '../../../src/lib/judge/reading/child.ts';
import { orderWord } from '../../../src/lib/judge/reading/order.ts';
import { childCase, type ShortVisit } from '../../support/kestrel.ts';

const PRIORS = new Priors(ATLAS, sheetOf(ATLAS, 'default'));
const TERM = { born: '2026-01-01', gestation: '40w0d' };

function pairs(visits: ShortVisit[], child: { born: string; gestation: string } = TERM) {
  const orders = new ChildReading(childCase(child, visits), PRIORS).orders();
  return (id: string, first = 0, second = 1) =>
    orders.get(id)!.find((pair) => pair.first === first && pair.second === second)!;
}

describe('a healthy child first seen at 7 months: the asymmetrical response gone, the symmetrical one there', () => {
  const found = pairs([
    {
      on: '2026-08-01',
      findings: [
        ['atnr', 'left', 'not-elicited'],
        ['atnr', 'right', 'not-elicited'],
        ['stnr', 'midline', 'elicited'],
      ],
    },
  ])('arms-then-legs');

  test('is never called out of order: the visits begin too late to show it', () => {
    expect(found.order).toBe('open');
    expect(found.reason).toBe('begins-too-late');
    expect(found.probability).toBeGreaterThan(0.5);
  });

  test('nor under any one source, nor under all', () => {
    const sources = [...ATLAS.sources.keys()];
    for (const chosen of ['all', ...sources.map((id) => new Set([id]))] as const) {
      const reading = new ChildReading(
        childCase(TERM, [
          {
            on: '2026-08-01',
            findings: [
              ['atnr', 'left', 'not-elicited'],
              ['stnr', 'midline', 'elicited'],
            ],
          },
        ]),
        new Priors(ATLAS, sheetOf(ATLAS, chosen)),
      );
      const [pair] = reading.orders().get('arms-then-legs')!;
      expect(['open', 'in-order']).toContain(pair!.order);
    }
  });
});

test('seen in order by three visits: in order', () => {
  const found = pairs([
    {
      on: '2026-03-01',
      findings: [
        ['atnr', 'left', 'elicited'],
        ['stnr', 'midline', 'not-elicited'],
      ],
    },
    {
      on: '2026-04-15',
      findings: [
        ['atnr', 'left', 'elicited'],
        ['stnr', 'midline', 'not-elicited'],
      ],
    },
    { on: '2026-08-01', findings: [['stnr', 'midline', 'elicited']] },
  ])('arms-then-legs');
  expect(found.probability).toBeGreaterThan(0.95);
  expect(found.oddsRatio).toBeGreaterThan(1);
});

test('backward long before forward, three times over: the visits reverse it, and every pair is there', () => {
  const visit = (on: string): ShortVisit => ({
    on,
    findings: [
      ['protective-forward', 'left', 'not-elicited'],
      ['protective-forward', 'right', 'not-elicited'],
      ['protective-backward', 'left', 'elicited'],
      ['protective-backward', 'right', 'elicited'],
    ],
  });
  const of = pairs([visit('2026-10-01'), visit('2026-11-01'), visit('2026-12-01')]);
  const found = of('protective-directions', 0, 2);
  expect(found.order).toBe('reversed');
  expect(found.reason).toBeNull();
  expect(of('protective-directions', 0, 1)).toBeDefined();
  expect(of('protective-directions', 1, 2).reason).toBe('not-looked-at');
});

test('two milestones are no pair, and one without a window is undated', () => {
  const of = pairs([]);
  expect(of('plantar-before-standing', 1, 2)).toBeUndefined();
  expect(of('plantar-before-standing', 0, 2)).toBeDefined();
  expect(of('atnr-before-rolling')).toMatchObject({
    order: 'open',
    reason: 'undated',
    sure: false,
  });
});

test('a grasp that is still there when the child walks is against its order', () => {
  const of = pairs([
    {
      on: '2027-01-01',
      findings: [
        ['plantar-grasp', 'left', 'elicited'],
        ['plantar-grasp', 'right', 'elicited'],
      ],
      milestones: { walking: true, standing: true },
    },
  ]);
  expect(of('plantar-before-standing', 0, 2).oddsRatio).toBeLessThan(1 / 3);
});

describe('an order that is open says why', () => {
  test('the sources themselves overlap, and so are not sure', () => {
    const of = pairs([
      {
        on: '2026-09-01',
        findings: [
          ['protective-forward', 'left', 'elicited'],
          ['protective-sideways', 'left', 'elicited'],
        ],
      },
    ]);
    const found = of('protective-directions');
    expect(found).toMatchObject({ order: 'open', reason: 'sources-overlap', sure: false });
    expect(found.sourcesOnly).toBeLessThan(0.95);
  });

  test('both are still to come', () => {
    const found = pairs([
      {
        on: '2026-05-01',
        findings: [['protective-forward', 'left', 'not-elicited']],
        milestones: { walking: false },
      },
    ])('forward-before-walking');
    expect(found).toMatchObject({ order: 'open', reason: 'still-to-come', sure: true });
    expect(found.sourcesOnly).toBeGreaterThanOrEqual(0.95);
  });

  test('without any visit: what the sources alone say, which say nothing of the child', () => {
    for (const orders of new ChildReading(childCase(TERM, []), PRIORS).orders().values())
      for (const pair of orders) {
        expect(pair.order).toBe('open');
        expect(pair.oddsRatio).toBe(1);
        expect(pair.probability).toEqual(pair.sourcesAlone);
        expect(pair.sure).toBe(pair.sourcesOnly >= 0.95);
      }
  });
});

describe('the word for an order', () => {
  test.each([
    [0.9, 0.95, 3, 'in-order'],
    [0.9, 0.949, 3, 'open'],
    [0.9, 0.99, 2.9, 'open'],
    [0.6, 0.49, 0.1, 'reversed'],
    [0.6, 0.5, 0.1, 'against'],
    [0.9, 0.6, 0.1, 'reversed'],
    [0.89, 0.6, 0.1, 'against'],
    [0.99, 0.9, 0.33, 'against'],
    [0.99, 0.9, 0.34, 'open'],
  ])('%f, %f, %f: %s', (alone, probability, ratio, word) => {
    expect(orderWord(alone, probability, ratio)).toBe(word);
  });
});
