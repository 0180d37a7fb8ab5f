import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Sequence } from '../../src/lib/atlas/types.ts';
import { CaseJudge, sheetOf } from '../../src/lib/judge/judge.ts';
import { findCycle, pairAsks, wholeOrder } from '../../src/lib/judge/sequence.ts';
import { childCase, type ShortFinding, type ShortVisit } from '../support/kestrel.ts';

const SHEET = sheetOf(ATLAS, 'default');

function orders(visits: ShortVisit[], gestation = '31w2d') {
  const record = childCase({ born: '2026-01-01', gestation }, visits);
  const { sequences } = new CaseJudge(record, { atlas: ATLAS, sheet: SHEET });
  return new Map(sequences.map((check) => [check.sequence.id, check]));
}

const both = (reflex: string, there: boolean): ShortFinding[] =>
  (['left', 'right'] as const).map((side) => [reflex, side, there ? 'elicited' : 'not-elicited']);
const one = (reflex: string, there: boolean): ShortFinding => [
  reflex,
  'midline',
  there ? 'elicited' : 'not-elicited',
];

describe('a healthy child first seen late', () => {
  test('born at term, seen at 7 months, the asymmetric response gone and the symmetric one there: not out of order', () => {
    const check = orders(
      [{ on: '2026-08-01', findings: [...both('atnr', false), one('stnr', true)] }],
      '40w0d',
    ).get('arms-then-legs')!;
    expect(check).toMatchObject({ order: 'open', reason: 'begins-too-late', asks: 'fits' });
  });
});

describe('in a child', () => {
  test('arms apart from each other, then arms apart from the legs', () => {
    const check = orders([
      { on: '2026-04-01', findings: [...both('atnr', true), one('stnr', false)] },
      { on: '2026-09-01', findings: [one('stnr', true)] },
    ]).get('arms-then-legs')!;
    expect(check).toMatchObject({ order: 'in-order', reason: null, asks: 'fits' });
    expect(check.stations.map((s) => s.reflexes)).toEqual([['atnr'], ['stnr']]);
  });

  test('the other way round at four visits around the change: the visits speak against it, watched', () => {
    const check = orders([
      { on: '2026-04-01', findings: [...both('atnr', false), one('stnr', false)] },
      { on: '2026-06-01', findings: [...both('atnr', false), one('stnr', true)] },
      { on: '2026-07-01', findings: [...both('atnr', false), one('stnr', true)] },
      { on: '2026-09-01', findings: [...both('atnr', true), one('stnr', true)] },
    ]).get('arms-then-legs')!;
    expect(check).toMatchObject({ order: 'against', asks: 'watch' });
    const [pair] = check.pairs;
    expect(pair!.probability).toBeLessThan(pair!.sourcesAlone);
  });

  test('never looked at: open, and it says so', () => {
    expect(
      orders([{ on: '2026-04-01', findings: both('atnr', true) }]).get('protective-directions'),
    ).toMatchObject({ order: 'open', reason: 'not-looked-at', asks: 'fits' });
  });

  test('protective extension forward, then sideways, backward still to come', () => {
    const at = (...there: [boolean, boolean, boolean]): ShortFinding[] =>
      ['forward', 'sideways', 'backward'].flatMap((way, index) =>
        both(`protective-${way}`, there[index]!),
      );
    const check = orders([
      { on: '2026-07-01', findings: at(false, false, false) },
      { on: '2026-09-01', findings: at(true, false, false) },
      { on: '2026-11-01', findings: at(true, true, false) },
    ]).get('protective-directions')!;
    expect(check.steps).toEqual(['in-order', 'in-order']);
    expect(check.order).toBe('in-order');
    expect(check.pairs.map(({ first, second }) => [first, second])).toEqual([
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
  });

  test('a closing before a milestone', () => {
    const check = orders([
      { on: '2026-05-01', findings: both('moro', true), milestones: { sitting: false } },
      { on: '2026-08-01', findings: both('moro', false), milestones: { sitting: false } },
      { on: '2026-10-01', findings: both('moro', false), milestones: { sitting: true } },
    ]).get('moro-before-sitting')!;
    // the sources overlap: the visits speak for the order, and do not settle it
    expect(check).toMatchObject({ order: 'open', reason: 'sources-overlap' });
    expect(check.pairs[0]!.oddsRatio).toBeGreaterThan(3);
  });
});

describe('a response with two sides', () => {
  const station = (visits: ShortVisit[], id: string, at: number) =>
    orders(visits).get(id)!.stations[at]!.interval;

  test('appears with its first side, whichever that is', () => {
    const visits = (first: 'left' | 'right', second: 'left' | 'right'): ShortVisit[] => [
      {
        on: '2026-07-01',
        findings: [
          ['protective-forward', first, 'not-elicited'],
          ['protective-forward', second, 'not-elicited'],
        ],
      },
      {
        on: '2026-08-01',
        findings: [
          ['protective-forward', first, 'elicited'],
          ['protective-forward', second, 'not-elicited'],
        ],
      },
      { on: '2026-09-01', findings: [['protective-forward', second, 'elicited']] },
    ];
    for (const [first, second] of [
      ['left', 'right'],
      ['right', 'left'],
    ] as const)
      expect(station(visits(first, second), 'protective-directions', 0)).toMatchObject({
        after: { on: '2026-07-01' },
        by: { on: '2026-08-01' },
      });
  });

  test('has integrated with its last side, and not while one is still there', () => {
    const visits = (first: 'left' | 'right', second: 'left' | 'right'): ShortVisit[] => [
      {
        on: '2026-04-01',
        findings: [
          ['moro', first, 'elicited'],
          ['moro', second, 'elicited'],
        ],
      },
      {
        on: '2026-07-01',
        findings: [
          ['moro', first, 'not-elicited'],
          ['moro', second, 'weak'],
        ],
      },
      { on: '2026-08-01', findings: [['moro', second, 'not-elicited']] },
    ];
    for (const [first, second] of [
      ['left', 'right'],
      ['right', 'left'],
    ] as const) {
      expect(station(visits(first, second), 'moro-before-sitting', 0)).toMatchObject({
        after: { on: '2026-07-01' },
        by: { on: '2026-08-01' },
      });
      expect(station(visits(first, second).slice(0, 2), 'moro-before-sitting', 0)).toMatchObject({
        after: { on: '2026-07-01' },
        by: null,
      });
    }
  });

  test('a side that gave no answer says nothing', () => {
    const unread: ShortVisit[] = [
      { on: '2026-04-01', findings: [['moro', 'left', 'not-elicited', 'crying']] },
    ];
    expect(station(unread, 'moro-before-sitting', 0)).toBeNull();
    expect(station(unread, 'moro-before-sitting', 1)).toBeNull();
  });
});

describe('the word for a whole sequence', () => {
  test.each([
    [['in-order', 'in-order', 'in-order'], ['in-order', 'in-order'], 'in-order'],
    [['in-order', 'open', 'in-order'], ['in-order', 'in-order'], 'in-order'],
    [['in-order', 'in-order', 'open'], ['in-order', 'open'], 'open'],
    [['in-order', 'in-order', 'against'], ['in-order', 'against'], 'against'],
    [['against', 'in-order', 'reversed'], ['against', 'reversed'], 'reversed'],
    [[], [], 'open'],
  ] as const)('%j, steps %j: %s', (pairs, steps, whole) => {
    expect(wholeOrder(pairs, steps)).toBe(whole);
  });

  test('an order of which the sources are not sure asks for nothing; against is never more than watch', () => {
    expect(pairAsks({ order: 'reversed', sure: true })).toBe('discuss');
    expect(pairAsks({ order: 'against', sure: true })).toBe('watch');
    for (const order of ['reversed', 'against', 'in-order', 'open'] as const)
      expect(pairAsks({ order, sure: false })).toBe('fits');
    for (const order of ['in-order', 'open'] as const)
      expect(pairAsks({ order, sure: true })).toBe('fits');
  });
});

describe('cycles among the orders', () => {
  test('the atlas has none', () => {
    expect(findCycle(ATLAS.sequences, ATLAS)).toBeUndefined();
  });

  test('any cycle of reflexes is found', () => {
    const ids = [...ATLAS.reflexes.keys()];
    fc.assert(
      fc.property(fc.shuffledSubarray(ids, { minLength: 2, maxLength: 8 }), (ring) => {
        const sequences = ring.map((reflex, i): Sequence => ({
          id: `s${i}`,
          kind: 'closing',
          stations: [
            { event: 'appears', reflex },
            { event: 'appears', reflex: ring[(i + 1) % ring.length]! },
          ],
          sources: [],
          contradictedBy: [],
          basis: 'memory',
        }));
        expect(findCycle(sequences, ATLAS)).toHaveLength(ring.length);
        expect(findCycle(sequences.slice(1), ATLAS)).toBeUndefined();
      }),
    );
  });
});
