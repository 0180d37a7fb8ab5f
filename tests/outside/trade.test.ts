/**
 * Check values of the trade: common practice, no source. They are no sources of the atlas; each is
 * compared with every claim the atlas holds. Where a value lies outside every claim, the row says so
 * openly: neither the value nor the atlas is bent.
 */
import { describe, expect, test } from 'vitest';
import { fromGestationWeeks, fromMonths, type AxisDay } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { readAt, totalsOf } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { windowsOf } from '../../src/lib/judge/window.ts';

const sheet = sheetOf(ATLAS);
const MONTH = 30.4375;

/** Days from a value to the nearest claim that dates the end (or start), 0 inside one. */
function distance(reflex: string, end: 'integrates' | 'appears', value: AxisDay): number {
  const spans = windowsOf(ATLAS.claims.get(reflex)!).flatMap((w) => {
    if (end === 'appears')
      return w.appears ? [w.appears] : w.byTerm ? [{ from: 280, to: 280 }] : [];
    return w.integrates?.to == null ? [] : [{ from: w.integrates.from, to: w.integrates.to }];
  });
  return Math.min(...spans.map((s) => Math.max(0, s.from - value, value - s.to)));
}

describe('usually gone about (months after birth; common practice, no source)', () => {
  test.each<[string, number]>([
    ['galant', 2],
    ['positive-support', 2],
    ['stepping', 2],
    ['rooting', 3],
    ['palmar-grasp', 4],
    ['moro', 5],
    ['acoustic-startle', 5],
    ['atnr', 6],
    ['tlr', 6],
    ['plantar-grasp', 9],
  ])('%s: %i months lies within a claim of the atlas', (reflex, months) => {
    expect(distance(reflex, 'integrates', fromMonths(months))).toBe(0);
  });

  test('each is expected less at that age than at its height, in the mean of all sources', () => {
    const values: [string, number][] = [
      ['galant', 2],
      ['stepping', 2],
      ['rooting', 3],
      ['palmar-grasp', 4],
      ['moro', 5],
      ['atnr', 6],
      ['tlr', 6],
      ['plantar-grasp', 9],
    ];
    for (const [reflex, months] of values) {
      const at = (m: number) =>
        totalsOf(readAt(sheet.get(reflex)!, fromMonths(m), 0)).meanExpectation;
      expect(at(months), reflex).toBeLessThan(1);
      expect(at(months + 4), reflex).toBeLessThan(at(months));
    }
  });

  test('the plantar grasp is the last of these to go: the middle of its dated ends is the latest', () => {
    const middle = (reflex: string): number => {
      const ends = windowsOf(ATLAS.claims.get(reflex)!)
        .flatMap((w) =>
          w.integrates?.to == null ? [] : [(w.integrates.from + w.integrates.to) / 2],
        )
        .sort((a, b) => a - b);
      return ends[Math.floor(ends.length / 2)]!;
    };
    const others = [
      'galant',
      'positive-support',
      'stepping',
      'rooting',
      'palmar-grasp',
      'moro',
      'acoustic-startle',
      'atnr',
      'tlr',
    ];
    for (const other of others) expect(middle('plantar-grasp')).toBeGreaterThan(middle(other));
  });
});

describe('comes about (common practice, no source)', () => {
  test.each<[string, AxisDay, string]>([
    ['stnr', fromMonths(6), 'about 6 months'],
    ['protective-forward', fromMonths(5), 'about 5 months'],
    ['protective-sideways', fromMonths(7), 'about 7 months'],
    ['protective-backward', fromMonths(9), 'about 9 months'],
    ['sucking', fromGestationWeeks(36), 'mature about 36 weeks'],
  ])('%s', (reflex, value) => {
    expect(distance(reflex, 'appears', value)).toBe(0);
  });

  test('the symmetrical tonic neck response stays two to three months: some claim has it so', () => {
    const stays = windowsOf(ATLAS.claims.get('stnr')!).map(
      (w) => (w.integratesFrom + w.integratesTo - w.appearsFrom - w.appearsTo) / 2 / MONTH,
    );
    // half a month for the precision of single printed ages
    expect(
      stays.some((months) => months >= 1.5 && months <= 3.5),
      stays.join(', '),
    ).toBe(true);
  });

  test('protective extension stays for life in every claim that speaks of its end', () => {
    for (const id of ['protective-forward', 'protective-sideways', 'protective-backward'])
      for (const claim of ATLAS.claims.get(id)!.filter((c) => c.role === 'window'))
        expect(['persists', 'not-stated']).toContain(claim.integratesStatus);
  });
});
