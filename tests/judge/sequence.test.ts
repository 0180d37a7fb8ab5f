import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Sequence } from '../../src/lib/atlas/types.ts';
import type { Interval } from '../../src/lib/case/course.ts';
import { agesOn } from '../../src/lib/age/clocks.ts';
import { checkSequences, findCycle, orderOf } from '../../src/lib/judge/sequence.ts';
import { childCase, type ShortVisit } from '../support/kestrel.ts';

function orders(visits: ShortVisit[]) {
  const record = childCase({ born: '2026-01-01', gestation: '31w2d' }, visits);
  const checks = checkSequences(ATLAS, record.visits, (on) => agesOn(record.child.birth, on));
  return new Map(checks.map((check) => [check.sequence.id, check]));
}

describe('in a child', () => {
  test('arms apart from each other, then arms apart from the legs', () => {
    const check = orders([
      {
        on: '2026-04-01',
        findings: [
          ['atnr', 'left', 'elicited'],
          ['stnr', 'midline', 'not-elicited'],
        ],
      },
      { on: '2026-09-01', findings: [['stnr', 'midline', 'elicited']] },
    ]).get('arms-then-legs')!;
    expect(check.order).toBe('holds');
    expect(check.stations.map((s) => s.reflexes)).toEqual([['atnr'], ['stnr']]);
  });

  test('the other way round is out of order', () => {
    const check = orders([
      {
        on: '2026-04-01',
        findings: [
          ['atnr', 'left', 'not-elicited'],
          ['stnr', 'midline', 'elicited'],
        ],
      },
      { on: '2026-09-01', findings: [['atnr', 'left', 'elicited']] },
    ]).get('arms-then-legs')!;
    expect(check.order).toBe('broken');
  });

  test('both first seen at one visit, or one never looked at: open', () => {
    const both = orders([
      {
        on: '2026-04-01',
        findings: [
          ['atnr', 'left', 'elicited'],
          ['stnr', 'midline', 'elicited'],
        ],
      },
    ]);
    expect(both.get('arms-then-legs')!.order).toBe('open');
    expect(both.get('protective-directions')!.order).toBe('open');
  });

  test('protective extension forward, then sideways, backward still to come', () => {
    const check = orders([
      {
        on: '2026-07-01',
        findings: [
          ['protective-forward', 'left', 'not-elicited'],
          ['protective-sideways', 'left', 'not-elicited'],
          ['protective-backward', 'left', 'not-elicited'],
        ],
      },
      {
        on: '2026-09-01',
        findings: [
          ['protective-forward', 'left', 'elicited'],
          ['protective-sideways', 'left', 'not-elicited'],
        ],
      },
      {
        on: '2026-11-01',
        findings: [
          ['protective-sideways', 'left', 'elicited'],
          ['protective-backward', 'left', 'not-elicited'],
        ],
      },
    ]).get('protective-directions')!;
    expect(check.steps).toEqual(['holds', 'holds']);
    expect(check.order).toBe('holds');
  });

  test('a closing before a milestone', () => {
    const visits = (sitting: boolean): ShortVisit[] => [
      { on: '2026-04-01', findings: [['moro', 'left', 'elicited']], milestones: { sitting } },
      { on: '2026-08-01', findings: [['moro', 'left', 'not-elicited']], milestones: { sitting } },
      { on: '2026-11-01', findings: [], milestones: { sitting: true } },
    ];
    expect(orders(visits(false)).get('moro-before-sitting')!.order).toBe('holds');
    expect(orders(visits(true)).get('moro-before-sitting')!.order).toBe('broken');
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

describe('an order of three', () => {
  const at = (on: string, ...there: [string, boolean][]): ShortVisit => ({
    on,
    findings: there.map(([way, is]) => [
      `protective-${way}`,
      'left',
      is ? 'elicited' : 'not-elicited',
    ]),
  });

  test('is broken by one step, however well the other holds', () => {
    const check = orders([
      at('2026-07-01', ['forward', false], ['sideways', false], ['backward', false]),
      at('2026-09-01', ['forward', true], ['sideways', false], ['backward', true]),
      at('2026-11-01', ['sideways', true]),
    ]).get('protective-directions')!;
    expect(check.steps).toEqual(['holds', 'broken']);
    expect(check.order).toBe('broken');
  });

  test('is open while one step is, however well the other holds', () => {
    const check = orders([
      at('2026-07-01', ['forward', false], ['sideways', false]),
      at('2026-09-01', ['forward', true], ['sideways', false]),
    ]).get('protective-directions')!;
    expect(check.steps).toEqual(['holds', 'open']);
    expect(check.order).toBe('open');
  });
});

describe('order of intervals', () => {
  const seen = (axisDay: number) => ({ on: '2026-01-01' as never, axisDay });
  const day = fc.option(fc.integer({ min: 0, max: 20 }));
  /** After one day and by a later one, either of which may not be known; near enough to meet others. */
  const interval = fc
    .tuple(day, day)
    .filter(([after, by]) => after === null || by === null || after < by)
    .map(([after, by]): Interval => ({
      after: after === null ? null : seen(after),
      by: by === null ? null : seen(by),
    }));

  const between = (after: number | null, by: number | null): Interval => ({
    after: after === null ? null : seen(after),
    by: by === null ? null : seen(by),
  });
  test.each<[string, Interval, Interval, string]>([
    ['one surely over before the other begins', between(0, 10), between(20, 30), 'holds'],
    [
      'one seen at the visit at which the other was not yet',
      between(0, 10),
      between(10, 20),
      'holds',
    ],
    ['the same turned round', between(10, 20), between(0, 10), 'broken'],
    ['they overlap', between(0, 11), between(10, 20), 'open'],
    ['there from the first visit on, the other later', between(null, 10), between(10, 20), 'holds'],
    ['both there from the first visit on', between(null, 10), between(null, 10), 'open'],
    ['neither there by the last visit', between(20, null), between(20, null), 'open'],
    [
      'the first still to come when the second is there',
      between(20, null),
      between(0, 10),
      'broken',
    ],
  ])('%s', (_, a, b, order) => {
    expect(orderOf(a, b)).toBe(order);
  });

  test('never holds both ways, and is unknown without an interval', () => {
    let held = 0;
    fc.assert(
      fc.property(interval, interval, (a, b) => {
        expect(orderOf(a, b) === 'holds' && orderOf(b, a) === 'holds').toBe(false);
        if (orderOf(a, b) === 'holds') {
          held += 1;
          expect(orderOf(b, a)).toBe('broken');
        }
        expect(orderOf(a, null)).toBe('open');
        expect(orderOf(null, b)).toBe('open');
      }),
    );
    expect(held).toBeGreaterThan(0);
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
