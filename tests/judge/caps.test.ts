import { describe, expect, test } from 'vitest';
import { ATLAS, type SourcedCount } from '../../src/lib/atlas/atlas.ts';
import type { Response } from '../../src/lib/case/finding.ts';
import { countedSo } from '../../src/lib/judge/caps.ts';
import { agreementOn } from '../../src/lib/judge/hangs.ts';
import { judgeCase, sheetOf, type Chosen } from '../../src/lib/judge/judge.ts';
import { wilson } from '../../src/lib/number/wilson.ts';
import { childCase, type ShortFinding } from '../support/kestrel.ts';

const TERM = { born: '2026-01-01', gestation: '40w0d' };
const months = (n: number): number => 280 + n * 30.4375;

function judgeOn(on: string, findings: ShortFinding[], chosen: Chosen = 'default') {
  const record = childCase(TERM, [{ on, findings }]);
  return judgeCase(record, { atlas: ATLAS, sheet: sheetOf(ATLAS, chosen) })[0]!.findings;
}
const codes = (found: { caps: readonly { code: string }[] }) => found.caps.map(({ code }) => code);

describe('a count of healthy infants holds a verdict to a watch', () => {
  const atnr = ATLAS.counts.get('atnr')!;

  // Shapiro et al. 1981, abstract: 249 infants at routine visits, any response in 89 % at 2 months,
  // 42 at 6 and 8 at 12; Wilson's interval of 42 % of 249 is 36.0 to 48.2 % (Newcombe 1998, method 3)
  test('42 of 100 still show the asymmetrical tonic neck response at 6 months', () => {
    const near = countedSo(atnr, months(6), true)!;
    expect(near.count.source.id).toBe('shapiro-1981');
    expect(near.percent).toBe(42);
    expect(near.interval.low).toBeCloseTo(0.36, 2);
    expect(near.interval.high).toBeCloseTo(0.482, 2);
    expect(countedSo(atnr, months(6), false)?.percent).toBe(58);
  });

  test('8 of 100 at 12 months are too few to hold anything', () => {
    expect(wilson(0.08 * 249, 249).low).toBeLessThan(0.1);
    expect(countedSo(atnr, months(12), true)).toBeUndefined();
  });

  test('more than a month away, fewer than 30 infants, patients or another measure: nothing is held', () => {
    const [like] = atnr.filter((c) => c.source.id === 'shapiro-1981' && c.percent === 42);
    const count = (part: Partial<SourcedCount>): SourcedCount[] => [{ ...like!, ...part }];
    expect(countedSo(count({}), months(7), true)).toBeDefined();
    expect(countedSo(count({}), months(7.1), true)).toBeUndefined();
    expect(countedSo(count({ n: 29 }), months(6), true)).toBeUndefined();
    expect(countedSo(count({ n: 30 }), months(6), true)).toBeDefined();
    expect(countedSo(count({ healthy: false }), months(6), true)).toBeUndefined();
    expect(countedSo(count({ role: 'context' }), months(6), true)).toBeUndefined();
    expect(countedSo(count({ answer: 'other', complementary: false }), months(6), true)).toBe(
      undefined,
    );
    expect(countedSo(count({ qualifier: '<' }), months(6), true)).toBeUndefined();
    expect(countedSo(count({ qualifier: '<' }), months(6), false)).toBeDefined();
  });

  test('a persisting response is watched, and the count is first among its grounds', () => {
    const only = new Set(['zafeiriou-2004', 'bates']); // gone by 3 and by 2 months
    const [found] = judgeOn('2026-07-01', [['atnr', 'left', 'elicited']], only);
    expect(found!.judged.verdict).toBe('persisting');
    expect(found!.attention).toBe('watch');
    expect(codes(found!)[0]).toBe('counted');
  });
});

describe('absence that tells little is never more than a watch', () => {
  test.each([...ATLAS.reflexes.values()].filter((r) => r.absence.tells === 'tells-little'))(
    '$id',
    ({ id, testedPerSide, absence }) => {
      expect(absence.missed).toBe(0.5);
      const side = testedPerSide ? 'left' : 'midline';
      for (const month of ['02', '05', '08', '11']) {
        const [found] = judgeOn(`2026-${month}-01`, [[id, side, 'not-elicited']]);
        expect(found!.attention).not.toBe('discuss');
      }
    },
  );

  test('absence that tells is still discussed', () => {
    const [found] = judgeOn('2026-02-01', [
      ['palmar-grasp', 'left', 'not-elicited', 'quiet-alert', 2],
    ]);
    expect(found).toMatchObject({ attention: 'discuss', caps: [] });
    expect(found!.judged.verdict).toBe('missing');
  });
});

describe('thin evidence is never more than a watch', () => {
  const stnr = (response: Response, chosen: Chosen) =>
    judgeOn('2027-03-01', [['stnr', 'midline', response]], chosen)[0]!;

  test('one voice alone: persisting in every source chosen, and watched', () => {
    const found = stnr('elicited', new Set(['kumc-2012']));
    expect(found.judged).toMatchObject({ verdict: 'persisting', share: 1 });
    expect(found).toMatchObject({ attention: 'watch' });
    expect(found.caps).toEqual([{ code: 'thin', voices: 1, memory: false }]);
  });

  test('two copies are one voice; two voices are discussed', () => {
    const copies = new Set(['molnar-handout', 'osullivan-handout']);
    expect(stnr('elicited', copies).caps).toEqual([{ code: 'thin', voices: 1, memory: false }]);
    const two = stnr('elicited', new Set(['molnar-handout', 'kumc-2012']));
    expect(two).toMatchObject({ attention: 'discuss', caps: [] });
  });

  test('memory alone: the amphibian reaction has one recalled source', () => {
    const found = judgeOn('2027-06-01', [['amphibian', 'left', 'not-elicited']])[0]!;
    expect(found.judged.verdict).toBe('missing');
    expect(found.caps).toContainEqual({ code: 'thin', voices: 1, memory: true });
    expect(found.attention).toBe('watch');
  });

  test('what rules raise is not held back: obligatory is discussed whatever the evidence', () => {
    const found = judgeOn(
      '2027-03-01',
      [['stnr', 'midline', 'obligatory']],
      new Set(['kumc-2012']),
    );
    expect(found[0]!.attention).toBe('discuss');
  });
});

describe('copies weigh together as one voice', () => {
  test('a family of three and one other: half of the say each', () => {
    // before term at 26 weeks: three of the family have the Moro response emerging, Robinson has it there
    const chosen = new Set([
      'allen-capute-1986',
      'futagi-2012',
      'statpearls-moro',
      'robinson-1966',
    ]);
    const record = childCase(
      { born: '2026-01-01', gestation: '26w0d', dating: 'assisted-conception' },
      [{ on: '2026-01-08', findings: [['moro', 'left', 'not-elicited']] }],
    );
    const [visit] = judgeCase(record, { atlas: ATLAS, sheet: sheetOf(ATLAS, chosen) });
    const { judged, finding, reading } = visit!.findings[0]!;
    if (judged.verdict === 'not-judged') throw new Error('judged');
    expect(judged.shares.missing).toBeCloseTo(0.5, 6);
    expect(judged.shares['may-still-appear']).toBeCloseTo(0.5, 6);
    expect(agreementOn(finding, 'may-still-appear', reading)).toEqual({
      agree: 3,
      of: 4,
      voices: { agree: 1, of: 2 },
    });
  });
});

describe('unlike sides are common from age to age, never for life', () => {
  // Kumhar et al. 2002: unlike in 20.7 to 40.3 of 100 healthy infants between 1 and 12 months
  test.each([
    ['2026-03-01', true, 'watch'],
    ['2026-10-01', true, 'watch'],
  ])('plantar response on %s: common %s', (on, common, attention) => {
    const found = judgeOn(on, [
      ['plantar-response', 'left', 'elicited'],
      ['plantar-response', 'right', 'not-elicited'],
    ]);
    const asking = found.find(({ raised }) => !raised[0]!.asExpected)!;
    expect(asking.raised[0]).toMatchObject({ flag: 'uneven', marked: true, common });
    expect(asking.attention).toBe(attention);
  });

  // Gupta et al. 2003: unlike in 5.4 of 100 newborns, so not common then
  test('in the first week they are not', () => {
    const [left] = judgeOn('2026-01-05', [
      ['plantar-response', 'left', 'elicited'],
      ['plantar-response', 'right', 'not-elicited'],
    ]);
    expect(left!.raised[0]).toMatchObject({ flag: 'uneven', common: false });
  });
});
