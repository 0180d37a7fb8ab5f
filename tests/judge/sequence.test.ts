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

describe('order of intervals', () => {
  const seen = (axisDay: number) => ({ on: '2026-01-01' as never, axisDay });
  const interval = fc
    .tuple(fc.option(fc.integer({ min: 0, max: 50 })), fc.option(fc.integer({ min: 51, max: 99 })))
    .map(([after, by]): Interval => ({
      after: after === null ? null : seen(after),
      by: by === null ? null : seen(by),
    }));

  test('never holds both ways, and is unknown without an interval', () => {
    fc.assert(
      fc.property(interval, interval, (a, b) => {
        expect(orderOf(a, b) === 'holds' && orderOf(b, a) === 'holds').toBe(false);
        if (orderOf(a, b) === 'holds') expect(orderOf(b, a)).toBe('broken');
        expect(orderOf(a, null)).toBe('open');
      }),
    );
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
          standing: '',
        }));
        expect(findCycle(sequences, ATLAS)).toHaveLength(ring.length);
        expect(findCycle(sequences.slice(1), ATLAS)).toBeUndefined();
      }),
    );
  });
});
