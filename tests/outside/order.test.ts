/** The orders of the atlas against the windows of the sources and published ages. */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { windowsOf } from '../../src/lib/judge/window.ts';

/** The middle of every dated appearance of a reflex, by source, in axis days. */
const starts = (reflex: string): Map<string, number> =>
  new Map(
    windowsOf(ATLAS.claims.get(reflex)!).flatMap((w) =>
      w.appears
        ? [[w.claim.source.id, (w.appears.from + w.appears.to) / 2] as const]
        : w.byTerm
          ? [[w.claim.source.id, 280] as const]
          : [],
    ),
  );

const medianOf = (values: Iterable<number>): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
};

describe('arms dissociated from each other before arms dissociated from legs (common practice, no source)', () => {
  test('every source has the symmetrical response appear after every source has the asymmetrical one', () => {
    const first = Math.max(...starts('atnr').values());
    const second = Math.min(...starts('stnr').values());
    expect(first).toBeLessThan(second);
  });
});

describe('protective extension: forward, then sideways, then backward', () => {
  test('in the middle of the sources', () => {
    const middle = ['protective-forward', 'protective-sideways', 'protective-backward'].map((id) =>
      medianOf(starts(id).values()),
    );
    expect(middle).toEqual([...middle].sort((a, b) => a - b));
  });

  test('Dreeben 2008 (read): 6, 7, 9 months', () => {
    const ages = ['protective-forward', 'protective-sideways', 'protective-backward'].map((id) =>
      Math.round(((starts(id).get('dreeben-2008') ?? 0) - 280) / 30.4375),
    );
    expect(ages).toEqual([6, 7, 9]);
  });

  test('Milani-Comparetti 1967 (memory) has sideways (6) before forward (7): the atlas keeps the quarrel', () => {
    expect(starts('protective-sideways').get('milani-1967')!).toBeLessThan(
      starts('protective-forward').get('milani-1967')!,
    );
  });

  test('Jaffe 1994 (read): measured means run arms 8.9, legs 9.2 months, against the taught legs first', () => {
    const mean = (id: string) => ATLAS.claims.get(id)!.find((c) => c.source.id === 'jaffe-1994')!;
    expect(mean('protective-forward')).toMatchObject({ role: 'context', appears: { low: 8.9 } });
    expect(mean('protective-downward')).toMatchObject({ role: 'context', appears: { low: 9.2 } });
    const order = ATLAS.sequences.find((s) => s.id === 'downward-then-forward')!;
    expect(order.contradictedBy).toContain('jaffe-1994');
  });
});
