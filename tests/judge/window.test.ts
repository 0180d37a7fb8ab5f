import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { windowsOf } from '../../src/lib/judge/window.ts';

const MONTH = 30.4375;
const read = (reflex: string, source: string) =>
  windowsOf(ATLAS.claims.get(reflex)!).filter((w) => w.claim.source.id === source);
const months = (n: number) => 280 + n * MONTH;

describe('a claim read as a window', () => {
  test('both ends stated: it speaks of every age', () => {
    const [w] = read('moro', 'kumc-2012'); // 28 weeks; 3-5 months
    expect(w).toMatchObject({ speaksFrom: -Infinity, speaksTo: Infinity, byTerm: false });
    expect(w).toMatchObject({ appearsFrom: 192.5, appearsTo: 199.5 });
    expect(w!.integratesFrom).toBeCloseTo(months(3));
    expect(w!.integratesTo).toBeCloseTo(months(5));
  });

  test('there by term: silent before day 280', () => {
    const [w] = read('moro', 'japan-exam-2020'); // birth; about 4 months
    expect(w).toMatchObject({ byTerm: true, appears: null, speaksFrom: 280, appearsTo: 280 });
    expect(w!.integratesFrom).toBeCloseTo(months(3.5));
  });

  test('no start stated: silent until every dated start has closed', () => {
    const [w] = read('atnr', 'beststart'); // end only; the latest close is week 6 after birth
    expect(w!.speaksFrom).toBe(280 + 42);
    expect(w!.appearsTo).toBe(280 + 42);
  });

  test('no end stated: established until the earliest dated end, then silent', () => {
    const [w] = read('moro', 'robinson-1966'); // earliest end: "to 2 months" opens at 1.5
    expect(w!.speaksTo).toBeCloseTo(months(1.5));
    expect(w!.integratesFrom).toBe(Infinity);
  });

  test('later than X: established until X, then silent', () => {
    const [w] = read('plantar-grasp', 'olhweiler-2005'); // still found at 12 months
    expect(w!.integrates).toEqual({ from: months(12), to: null });
    expect(w!.speaksTo).toBeCloseTo(months(12));
  });

  test('for life: speaks without end', () => {
    const [w] = read('protective-sideways', 'dreeben-2008');
    expect(w).toMatchObject({ lifelong: true, speaksTo: Infinity, integratesFrom: Infinity });
  });

  test('never by a context claim', () => {
    expect(read('tlr', 'physiopedia-tlr')).toEqual([]);
    expect(read('protective-forward', 'jaffe-1994')).toEqual([]);
  });

  test('edges run in order for every claim of the atlas', () => {
    for (const claims of ATLAS.claims.values())
      for (const w of windowsOf(claims)) {
        const edges = [w.appearsFrom, w.appearsTo, w.integratesFrom, w.integratesTo];
        expect(edges).toEqual([...edges].sort((a, b) => a - b));
        expect(w.speaksFrom).toBeLessThan(w.speaksTo);
      }
  });
});
