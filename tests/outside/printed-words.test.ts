/**
 * Printed words read as what they say. The ages come from the sources named on each row, as printed;
 * the days are computed here by hand: term is day 280, a week 7 days, a month 30.4375 days, and a single
 * printed age keeps half its unit on either side.
 */
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { compile, readAt, totalsOf } from '../../src/lib/judge/expectation.ts';
import { verdictOf } from '../../src/lib/judge/verdict.ts';
import { windowsOf, type Window } from '../../src/lib/judge/window.ts';

const MONTH = 30.4375;
const months = (n: number): number => 280 + n * MONTH;
const weeks = (n: number): number => n * 7;

const windowOf = (reflex: string, source: string): Window =>
  windowsOf(ATLAS.claims.get(reflex)!).find((w) => w.claim.source.id === source)!;

/** What one source makes of a response at an exact day. */
const said = (window: Window, day: number, response: 'elicited' | 'not-elicited'): string =>
  verdictOf({ response, state: 'quiet-alert' }, readAt(compile([window]), day, 0)).verdict;

describe('"by", "up to", "to" and "until" one age let a response go before it', () => {
  test.each<[reflex: string, source: string, printed: string, from: number, to: number]>([
    // Cincinnati Children's, newborn reflexes
    ['moro', 'cincinnati', 'to 2 months', 280, months(2.5)],
    // Brown University residency page, after Pediatrics in Review 2010;31:267-277
    ['moro', 'brown-medpeds', 'by 6 months', 280, months(6.5)],
    // University of British Columbia, KIN 355: from about one week
    ['stepping', 'ubc-kin355', 'up to 4 months', 280 + 7 * 1.5, months(4.5)],
    // Fiorentino 1963, spinal level
    ['extensor-thrust', 'fiorentino-1963', 'to 2 months', 280, months(2.5)],
    ['flexor-withdrawal', 'fiorentino-1963', 'to 2 months', 280, months(2.5)],
    ['crossed-extension', 'fiorentino-1963', 'to 2 months', 280, months(2.5)],
    // Human Phenotype Ontology, neck righting
    ['neck-righting', 'hpo-neck', 'to 5 years', 280, 280 + 5.5 * 365.25],
    // GPnotebook, crossed extension: adduction from 36 weeks
    ['crossed-extension', 'gpnotebook-crossed', 'until 1 month', weeks(36.5), months(1.5)],
    // Futagi et al., Pediatr Neurol 2013;49:149-155
    ['babkin', 'futagi-2013', 'by the end of the 5th month', 280, months(5.5)],
    // Futagi et al., No To Hattatsu 1987;19:392-396, abstract: until the fourth month of life, its end 4 months
    ['babkin', 'futagi-1987', 'until the fourth month', 280, months(4)],
  ])('%s, %s: %s', (reflex, source, printed, from, to) => {
    const window = windowOf(reflex, source);
    expect(window.claim.integrates?.asPrinted).toContain(printed);
    expect(window.integratesFrom).toBeCloseTo(from, 6);
    expect(window.integratesTo).toBeCloseTo(to, 6);
    const before = (from + to) / 2;
    expect(said(window, before, 'not-elicited')).toBe('fits');
    expect(said(window, before, 'elicited')).toBe('closing');
    expect(said(window, to + 1, 'elicited')).toBe('persisting');
  });

  // Snir et al., Curr Eye Res 2010, abstract: 325 infants of 1 to 32 weeks; suppressed in 75 of 100 by 11.5
  // weeks, in over 95 by 20
  test('three in four without it by an age: it goes from the youngest age examined, for others too', () => {
    const window = windowOf('dolls-eye', 'snir-2010');
    expect(window.claim.integrates?.asPrinted).toContain('75 percent suppressed by 11.5 weeks');
    expect(window.integratesFrom).toBeCloseTo(280 + 7, 6);
    expect(window.integratesTo).toBeCloseTo(280 + 20 * 7, 6);
    const at = 280 + 11.5 * 7;
    expect(said(window, at, 'not-elicited')).toBe('fits');
    expect(said(window, at, 'elicited')).toBe('closing');
    // a source that dates no end has it there no longer than any other lets it go
    for (const source of ['garcia-sanchez', 'volpe'])
      expect(said(windowOf('dolls-eye', source), at, 'not-elicited')).toBe('not-judged');
  });

  /*
   * Olhweiler et al., Arq Neuropsiquiatr 2005;63:294-297, abstract: healthy preterm infants examined at 3, 6, 9
   * and 12 months of corrected age. 2.7 in 100 had each of the three at 6 months, nobody at 9 and 12.
   */
  test.each(['moro', 'palmar-grasp', 'positive-support'])(
    '%s: nearly all without it at an examination: it goes before, from the youngest age examined',
    (reflex) => {
      const window = windowOf(reflex, 'olhweiler-2005');
      expect(window.claim.integrates?.asPrinted).toBe('2.7 percent at 6 months, none at 9');
      const expected = (month: number): number =>
        totalsOf(readAt(compile([window]), months(month), 0)).meanExpectation;
      expect(Math.abs(expected(6) - 0.027)).toBeLessThan(0.03);
      expect(expected(9)).toBe(0);
      // what was found at 3 months was not read: between the two examinations neither answer is unexpected
      expect(said(window, months(4.5), 'elicited')).toBe('closing');
      expect(said(window, months(4.5), 'not-elicited')).toBe('fits');
      // and before the study looked it says no more than the others: there
      expect(said(window, months(2), 'not-elicited')).toBe('missing');
      expect(said(window, months(6.5), 'elicited')).toBe('persisting');
    },
  );

  test('every such wording of the atlas is read so, a range excepted: it names its own first age', () => {
    const wording =
      /(?:^|\s)(?:by|up to|to|until)(?: the end of the)? (?:about )?(\d[\d.]*)(?!\S*-)/;
    const loose = [...ATLAS.claims.values()].flat().filter((claim) => {
      const { integrates, role } = claim;
      if (role !== 'window' || !integrates || integrates.high !== integrates.low) return false;
      return wording.test(integrates.asPrinted) && !integrates.atLatest;
    });
    expect(loose.map(({ reflex, source }) => `${source.id} on ${reflex}`)).toEqual([]);
  });

  test('other windows stay: the earliest end of the Moro response is still "2 months", opening at 1.5', () => {
    expect(windowOf('moro', 'robinson-1966').speaksTo).toBeCloseTo(months(1.5), 6);
  });
});

describe('not there in all: no missing response where the words leave some infants out', () => {
  // Allen & Capute, Pediatr Res 1986;20:1284-1289, abstract: some from 25 weeks, the majority by 30
  test.each(['moro', 'atnr', 'galant'])(
    '%s: the majority by 30 weeks is not established',
    (reflex) => {
      const window = windowOf(reflex, 'allen-capute-1986');
      expect(said(window, weeks(30), 'not-elicited')).toBe('may-still-appear');
      expect(said(window, weeks(31), 'not-elicited')).toBe('not-judged');
      const half = totalsOf(readAt(compile([window]), weeks(30), 0)).meanExpectation;
      expect(half).toBeCloseTo(0.5, 1);
    },
  );

  test.each(['positive-support', 'stepping', 'placing-leg'])(
    '%s: not uniform at term is not complete at 40 weeks; occasional before 30 weeks is not early',
    (reflex) => {
      const window = windowOf(reflex, 'allen-capute-1986');
      expect(said(window, weeks(40), 'not-elicited')).toBe('may-still-appear');
      expect(said(window, weeks(41), 'not-elicited')).toBe('not-judged');
      expect(said(window, weeks(28), 'elicited')).toBe('fits');
      expect(said(window, weeks(24), 'elicited')).toBe('early');
    },
  );

  // Edwards & Al Khalili, StatPearls NBK542173: usual by 30 weeks, fading from 12 weeks, gone by 6 months
  test('usual by 30 weeks is not established then; a source that dates the end speaks on', () => {
    const window = windowOf('moro', 'statpearls-moro');
    expect(said(window, weeks(30), 'not-elicited')).toBe('may-still-appear');
    expect(said(window, months(1), 'not-elicited')).toBe('missing');
  });
});

describe('fading or changing after an age is not gone by it', () => {
  test.each<[reflex: string, source: string, printed: string, month: number]>([
    ['rooting', 'nelson', 'less prominent after 1 month', 1],
    ['sucking', 'peel-health', 'after about 3 months', 3],
    ['rooting', 'peel-health', 'after 3-4 months', 3],
    ['sucking', 'beststart', 'voluntary after 4 months', 4],
  ])('%s, %s: %s', (reflex, source, printed, month) => {
    const window = windowOf(reflex, source);
    expect(window.claim.integrates?.asPrinted).toBe(printed);
    expect(window.speaksTo).toBeCloseTo(months(month), 6);
    expect(said(window, months(month) + 30, 'elicited')).toBe('not-judged');
  });

  test('fully developed by 6-8 months does not make an earlier answer early', () => {
    expect(said(windowOf('stnr', 'wikipedia-stnr'), months(5), 'elicited')).not.toBe('early');
  });
});

test('ages that a source does not call corrected are of unknown correction', () => {
  // Romeo et al. 2011, abstract: infants with lesions at 6, 9 and 12 months, correction not stated
  const rows = ATLAS.sources.get('romeo-2011')!.counts;
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) expect(row.corrected).toBe('unknown');
});
