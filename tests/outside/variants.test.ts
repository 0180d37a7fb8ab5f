/**
 * Forward protection as two tests, each by its own ages. Outside figures, from the sources named: propping, tipped
 * forward in sitting, "6 months (sitting)" (Dreeben-Irimia 2008, read in notes that cite the book); the parachute
 * as measured in infants, mean 8.9 months (Jaffe et al. 1994, n 190), complete most often at 9 months (Romeo et
 * al. 2009, n 484), in 8.1 of 100 preterm infants at 6 months and 87.5 at 9, corrected (Ohlweiler et al. 2002).
 * All but the first were read in abstracts.
 */
import { describe, expect, test } from 'vitest';
import { fromMonths } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { readAt, totalsOf } from '../../src/lib/judge/expectation.ts';
import { CaseJudge, sheetOf } from '../../src/lib/judge/judge.ts';
import { Inferred } from '../../src/lib/judge/reading/course.ts';
import { priorOf } from '../../src/lib/judge/reading/prior.ts';
import { childCase, type ShortVisit } from '../support/kestrel.ts';

const REFLEX = 'protective-forward';
const sheet = sheetOf(ATLAS, 'default');
const options = { atlas: ATLAS, sheet };

const expectedAt = (test: string, months: number): number =>
  totalsOf(readAt(sheet.get(test)!, fromMonths(months), 0)).meanExpectation;

const both = (
  variant: string | undefined,
  response: 'elicited' | 'not-elicited',
): ShortVisit['findings'] => [
  [REFLEX, 'left', response, 'quiet-alert', undefined, variant],
  [REFLEX, 'right', response, 'quiet-alert', undefined, variant],
];
const judged = (...visits: ShortVisit[]) => {
  const record = childCase({ born: '2026-01-01', gestation: '40w0d' }, visits);
  const judge = new CaseJudge(record, options);
  return record.visits.map((visit) => judge.visit(visit));
};

describe('what each test leads one to expect', () => {
  test('propping is there from about 6 months: expected by half of the sources then, by nearly all at 9', () => {
    expect(expectedAt(`${REFLEX}/propping`, 4)).toBeLessThan(0.25);
    expect(expectedAt(`${REFLEX}/propping`, 6)).toBeGreaterThanOrEqual(0.25);
    expect(expectedAt(`${REFLEX}/propping`, 9)).toBeGreaterThan(0.95);
  });

  test.each([5, 6, 7, 8])(
    'at %i months propping is expected no less than the parachute',
    (months) => {
      expect(expectedAt(`${REFLEX}/propping`, months)).toBeGreaterThanOrEqual(
        expectedAt(`${REFLEX}/forward`, months),
      );
    },
  );

  // Ohlweiler et al. 2002: 87.5 of 100 at 9 months
  test('the parachute at 9 months as it was counted', () => {
    const course = new Inferred(priorOf(sheet.get(`${REFLEX}/forward`)!.windows), [], 0);
    expect(Math.abs(course.states(fromMonths(9)).there - 0.875)).toBeLessThan(0.1);
  });

  test('each is judged by its own sources and by those that do not say which they mean', () => {
    const sources = (key: string) =>
      new Set(
        sheetOf(ATLAS)
          .get(key)!
          .windows.map(({ claim }) => claim.source.id),
      );
    const [propping, parachute] = [sources(`${REFLEX}/propping`), sources(`${REFLEX}/forward`)];
    expect(propping).toContain('dreeben-2008');
    expect(parachute).not.toContain('dreeben-2008');
    expect(parachute).toContain('milani-1967');
    expect(propping).not.toContain('milani-1967');
    for (const unsaid of ['brown-medpeds', 'medicmedia-qb'])
      expect([...propping].includes(unsaid) && [...parachute].includes(unsaid)).toBe(true);
    expect(new Set([...propping, ...parachute])).toEqual(sources(REFLEX));
  });
});

describe('a healthy child of 7 months who props and has no parachute yet', () => {
  const [props, parachute] = judged(
    { on: '2026-08-04', examiner: 'A', findings: both('propping', 'elicited') },
    { on: '2026-08-04', examiner: 'B', findings: both('forward', 'not-elicited') },
  );

  test('is as expected for both, and nothing is seen before and not now', () => {
    for (const { findings, pattern } of [props!, parachute!]) {
      expect(findings).toHaveLength(2);
      for (const { attention, raised } of findings) {
        expect(attention).toBe('fits');
        expect(raised).toEqual([]);
      }
      expect(pattern.differences).toEqual([]);
    }
    expect(props!.findings[0]!.judged.verdict).toBe('fits');
    expect(parachute!.findings[0]!.judged.verdict).toBe('may-still-appear');
  });

  test('has a name for each', () => {
    expect(props!.findings[0]!.reflex.short).toBe('Protective, forward: propping');
    expect(parachute!.findings[0]!.reflex.short).toBe('Protective, forward: parachute');
    expect(props!.findings[0]!.reflex.position).toBe('sitting');
  });

  test('at 12 months without the parachute is another matter: missing, whatever the propping', () => {
    const [, , later] = judged(
      { on: '2026-08-01', findings: both('propping', 'elicited') },
      { on: '2026-10-01', findings: both('propping', 'elicited') },
      { on: '2027-01-01', findings: both('forward', 'not-elicited') },
    );
    for (const found of later!.findings) {
      expect(found.judged.verdict).toBe('missing');
      // it was never seen before, so it is not lost
      expect(found.raised.map(({ flag }) => flag)).not.toContain('seen-before');
    }
  });
});
