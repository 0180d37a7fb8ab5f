import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FEW_PAIRS, agreementOf, agreementsIn, type Pair } from '../../src/lib/cohort/agreement.ts';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { RESPONSES, STATES, type Finding } from '../../src/lib/case/finding.ts';
import { childCase, type ShortVisit } from '../support/kestrel.ts';

const TERM = { born: '2026-01-01', gestation: '40w0d' };
const record = (visits: ShortVisit[]) => childCase(TERM, visits);

describe('which findings stand beside each other', () => {
  test('the same date, reflex and side, by two examiners', () => {
    const [found, ...others] = agreementsIn([
      record([
        {
          on: '2026-02-01',
          examiner: 'Wren',
          findings: [
            ['moro', 'left', 'elicited'],
            ['moro', 'right', 'elicited'],
            ['atnr', 'left', 'brisk'],
          ],
        },
        {
          on: '2026-02-01',
          examiner: 'Dunlin',
          findings: [
            ['moro', 'left', 'elicited'],
            ['moro', 'right', 'not-elicited'],
            ['atnr', 'right', 'brisk'],
          ],
        },
        { on: '2026-03-01', examiner: 'Dunlin', findings: [['moro', 'left', 'weak']] },
      ]),
    ]);
    expect(others).toEqual([]);
    expect(found).toMatchObject({ first: 'Dunlin', second: 'Wren', n: 2, same: 1, share: 0.5 });
    expect(found!.differences).toMatchObject([
      {
        on: '2026-02-01',
        steps: 2,
        first: { reflex: 'moro', side: 'right', response: 'not-elicited' },
        second: { response: 'elicited' },
      },
    ]);
  });

  test('three examiners make three pairs, each by itself', () => {
    const visit = (examiner: string, response: 'weak' | 'elicited' | 'brisk'): ShortVisit => ({
      on: '2026-02-01',
      examiner,
      findings: [['moro', 'left', response]],
    });
    const found = agreementsIn([
      record([visit('C', 'brisk'), visit('A', 'weak'), visit('B', 'elicited')]),
    ]);
    expect(found.map((f) => [f.first, f.second, f.differences[0]!.steps])).toEqual([
      ['A', 'B', 1],
      ['A', 'C', 2],
      ['B', 'C', 1],
    ]);
  });

  test('the pairs of several children are counted together and say whose they are', () => {
    const child = record([
      { on: '2026-02-01', examiner: 'A', findings: [['moro', 'left', 'weak']] },
      { on: '2026-02-01', examiner: 'B', findings: [['moro', 'left', 'brisk']] },
    ]);
    const [found] = agreementsIn([child, child, child]);
    expect(found!.n).toBe(3);
    expect(found!.differences.map((d) => d.record)).toEqual([0, 1, 2]);
  });

  test('an examiner without a name is nobody in particular', () => {
    expect(
      agreementsIn([
        record([
          { on: '2026-02-01', examiner: '', findings: [['moro', 'left', 'weak']] },
          { on: '2026-02-01', examiner: 'B', findings: [['moro', 'left', 'weak']] },
        ]),
      ]),
    ).toEqual([]);
  });
});

const finding = (response: Finding['response'], state: Finding['state'] = 'quiet-alert') => ({
  reflex: 'moro',
  side: 'midline' as const,
  response,
  state,
  note: '',
});
const pair = (first: Finding, second: Finding): Pair => ({
  record: 0,
  on: '2026-02-01' as CivilDate,
  first,
  second,
});

describe('what is left out of the figures', () => {
  test('not assessable is told as a difference without steps', () => {
    const found = agreementOf('A', 'B', [
      pair(finding('not-assessable'), finding('weak')),
      pair(finding('not-assessable'), finding('not-assessable')),
    ]);
    expect(found).toMatchObject({ n: 0, leftOut: 2, share: null, interval: null });
    expect(found.kappa).toEqual({ code: 'no-pairs' });
    expect(found.weighted).toEqual({ code: 'no-pairs' });
    expect(found.differences).toMatchObject([{ steps: null, second: { response: 'weak' } }]);
  });

  test('not elicited in a crying infant is no answer; elicited in one is', () => {
    const found = agreementOf('A', 'B', [
      pair(finding('not-elicited', 'crying'), finding('elicited')),
      pair(finding('elicited', 'crying'), finding('elicited')),
    ]);
    expect(found).toMatchObject({ n: 1, leftOut: 1, same: 1 });
    expect(found.differences).toMatchObject([{ steps: null }]);
  });
});

describe('figures', () => {
  test('one answer throughout has no kappa, and says so', () => {
    const found = agreementOf('A', 'B', [pair(finding('elicited'), finding('elicited'))]);
    expect(found.kappa).toEqual({ code: 'one-answer' });
    expect(found.weighted).toEqual({ code: 'one-answer' });
    expect(found.share).toBe(1);
    expect(found.interval!.low).toBeLessThan(0.5); // one pair proves little
  });

  test('few pairs are called few', () => {
    const pairs = Array.from({ length: FEW_PAIRS }, () =>
      pair(finding('elicited'), finding('weak')),
    );
    expect(agreementOf('A', 'B', pairs).size).toBe('enough');
    expect(agreementOf('A', 'B', pairs.slice(1)).size).toBe('few');
  });

  const findings = fc
    .tuple(fc.constantFrom(...RESPONSES), fc.constantFrom(...STATES))
    .map(([response, state]) => finding(response, state));
  const pairs = fc.array(fc.tuple(findings, findings).map(([a, b]) => pair(a, b)));

  test('the table adds up: all of it to n, its diagonal to the same answers', () => {
    fc.assert(
      fc.property(pairs, (list) => {
        const { table, n, same, leftOut, differences } = agreementOf('A', 'B', list);
        expect(table.flat().reduce((a, b) => a + b, 0)).toBe(n);
        expect(table.reduce((sum, row, i) => sum + row[i]!, 0)).toBe(same);
        expect(n + leftOut).toBe(list.length);
        expect(differences.filter(({ steps }) => steps !== null)).toHaveLength(n - same);
      }),
    );
  });

  test('the order of the pairs changes no figure', () => {
    fc.assert(
      fc.property(
        pairs.chain((list) =>
          fc.tuple(
            fc.constant(list),
            fc.shuffledSubarray(list, { minLength: list.length, maxLength: list.length }),
          ),
        ),
        ([list, shuffled]) => {
          const [a, b] = [agreementOf('A', 'B', list), agreementOf('A', 'B', shuffled)];
          expect({ ...a, differences: a.differences.length }).toEqual({
            ...b,
            differences: b.differences.length,
          });
        },
      ),
    );
  });

  test('the examiners may change places', () => {
    fc.assert(
      fc.property(pairs, (list) => {
        const a = agreementOf('A', 'B', list);
        const b = agreementOf(
          'B',
          'A',
          list.map((p) => ({ ...p, first: p.second, second: p.first })),
        );
        expect([b.n, b.same, b.share, b.interval]).toEqual([a.n, a.same, a.share, a.interval]);
        expect(b.table).toEqual(a.table.map((_, j) => a.table.map((row) => row[j]!)));
        expect(b.kappa.code).toBe(a.kappa.code);
        if (a.weighted.code === 'estimated' && b.weighted.code === 'estimated')
          expect(b.weighted.kappa).toBeCloseTo(a.weighted.kappa, 9);
      }),
    );
  });
});
