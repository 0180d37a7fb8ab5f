import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Response } from '../../src/lib/case/finding.ts';
import { judgeCase, sheetOf, worstFirst, type Chosen } from '../../src/lib/judge/judge.ts';
import { childCase, type ShortFinding, type ShortVisit } from '../support/kestrel.ts';

/** A child born at term on 1 January, so that an age in months is exact and easy to read. */
const TERM = { born: '2026-01-01', gestation: '40w0d' };
const at = (month: number): string => `2026-${String(month + 1).padStart(2, '0')}-01`;

function judgeAt(month: number, finding: ShortFinding, chosen: Chosen = 'all') {
  const record = childCase(TERM, [{ on: at(month), findings: [finding] }]);
  return judgeCase(record, { atlas: ATLAS, sheet: sheetOf(ATLAS, chosen) })[0]!.findings[0]!;
}

function judgeAll(visits: ShortVisit[], child = TERM) {
  const record = childCase(child, visits);
  return judgeCase(record, { atlas: ATLAS, sheet: sheetOf(ATLAS) }).flatMap((v) => v.findings);
}

describe('a verdict under one source, by phase (the table of the design, one row each)', () => {
  const kansas = new Set(['kumc-2012']); // symmetrical tonic neck: 4-6 to 8-12 months
  test.each<[number, Response, string]>([
    [3, 'elicited', 'early'],
    [5, 'elicited', 'fits'],
    [7, 'elicited', 'fits'],
    [10, 'elicited', 'closing'],
    [3, 'not-elicited', 'fits'],
    [5, 'not-elicited', 'may-still-appear'],
    [7, 'not-elicited', 'missing'],
    [10, 'not-elicited', 'fits'],
  ])('at %i months, %s: %s', (month, response, verdict) => {
    const { judged } = judgeAt(month, ['stnr', 'midline', response], kansas);
    expect(judged.verdict).toBe(verdict);
    if (judged.verdict === 'not-judged') throw new Error('judged');
    expect(judged.firm).toBe(true);
    expect(judged.shares[judged.verdict]).toBeCloseTo(1, 12);
  });

  test('past the end: persisting; one voice alone is watched at most', () => {
    const record = childCase(TERM, [
      { on: '2027-03-01', findings: [['stnr', 'midline', 'elicited']] },
    ]);
    const [visit] = judgeCase(record, { atlas: ATLAS, sheet: sheetOf(ATLAS, kansas) });
    expect(visit!.findings[0]!.judged.verdict).toBe('persisting');
    expect(visit!.findings[0]!.attention).toBe('watch');
  });
});

describe('what is not judged never counts as fitting', () => {
  test.each<[ShortFinding, string]>([
    [['moro', 'left', 'not-assessable'], 'not-assessable'],
    [['moro', 'left', 'not-elicited', 'crying'], 'unfit-state'],
    [['moro', 'left', 'not-elicited', 'active-sleep'], 'unfit-state'],
    [['moro', 'left', 'not-elicited', 'drowsy'], 'unfit-state'],
  ])('%j', (finding, code) => {
    const found = judgeAt(1, finding);
    expect(found.attention).toBe('not-judged');
    expect(found.judged).toMatchObject({ verdict: 'not-judged', why: { code } });
  });

  test('an elicited answer in sleep is an answer', () => {
    expect(judgeAt(1, ['moro', 'left', 'elicited', 'active-sleep']).judged.verdict).toBe('fits');
  });

  test('every chosen source silent', () => {
    const robinson = new Set(['robinson-1966']); // gives no end; silent once any source lets it go
    expect(judgeAt(5, ['moro', 'left', 'elicited'], robinson).judged).toMatchObject({
      why: { code: 'silent' },
    });
    expect(judgeAt(5, ['moro', 'left', 'obligatory'], robinson).attention).toBe('discuss');
  });
});

describe('on top of the phase', () => {
  test('uneven, and marked where one side is missing while the response is expected', () => {
    const found = judgeAll([
      {
        on: at(1),
        findings: [
          ['moro', 'left', 'elicited'],
          ['moro', 'right', 'not-elicited'],
        ],
      },
    ]);
    for (const { raised } of found) expect(raised.map((r) => r.flag)).toEqual(['uneven']);
    // the side that answers as expected is not graded by the other
    expect(found.map(({ attention }) => attention)).toEqual(['fits', 'discuss']);
  });

  test('uneven by one step is watched', () => {
    const [left] = judgeAll([
      {
        on: at(1),
        findings: [
          ['moro', 'left', 'elicited'],
          ['moro', 'right', 'brisk'],
        ],
      },
    ]);
    expect(left).toMatchObject({ attention: 'watch', raised: [{ flag: 'uneven', marked: false }] });
  });

  test('unlike sides of the plantar response are common: watched, not discussed', () => {
    const [, right] = judgeAll([
      {
        on: at(2),
        findings: [
          ['plantar-response', 'left', 'elicited'],
          ['plantar-response', 'right', 'not-elicited'],
        ],
      },
    ]);
    expect(right!.raised[0]).toMatchObject({ flag: 'uneven', marked: true, common: true });
    expect(right!.attention).toBe('watch');
  });

  test('a side that slept is not compared', () => {
    const [left] = judgeAll([
      {
        on: at(1),
        findings: [
          ['moro', 'left', 'elicited'],
          ['moro', 'right', 'not-elicited', 'crying'],
        ],
      },
    ]);
    expect(left!.raised).toEqual([]);
  });

  test('weak at its height is watched, weak while closing is expected', () => {
    expect(judgeAt(1, ['moro', 'left', 'weak'])).toMatchObject({
      attention: 'watch',
      raised: [{ flag: 'weak' }],
    });
    expect(judgeAt(6, ['moro', 'left', 'weak']).raised).toEqual([]);
  });

  test('brisk is watched and obligatory discussed at any age', () => {
    expect(judgeAt(1, ['atnr', 'left', 'brisk'])).toMatchObject({ attention: 'watch' });
    expect(judgeAt(1, ['atnr', 'left', 'obligatory'])).toMatchObject({ attention: 'discuss' });
  });

  test('returned: there, gone, there again; a visit in the wrong state is passed over', () => {
    const visits = (middle: ShortFinding): ShortVisit[] => [
      { on: at(1), findings: [['rooting', 'left', 'elicited']] },
      { on: at(2), findings: [middle] },
      { on: at(3), findings: [['rooting', 'left', 'elicited']] },
    ];
    const back = judgeAll(visits(['rooting', 'left', 'not-elicited']));
    expect(back.map((f) => f.raised.map((r) => r.flag))).toEqual([[], [], ['returned']]);
    // at 2 months it had more likely been missed than gone
    expect(back[2]!.attention).toBe('watch');
    const moro = [2, 7, 9].map((month, index) => ({
      on: at(month),
      findings: [['moro', 'left', index === 1 ? 'not-elicited' : 'elicited'] as ShortFinding],
    }));
    expect(judgeAll(moro)[2]).toMatchObject({
      attention: 'discuss',
      raised: [{ flag: 'returned', asks: 'discuss' }],
    });
    expect(judgeAll(visits(['rooting', 'left', 'not-elicited', 'crying']))[2]!.raised).toEqual([]);
  });

  test('two examiners on one day are no return', () => {
    const found = judgeAll([
      { on: at(1), examiner: 'A', findings: [['rooting', 'left', 'elicited']] },
      { on: at(2), examiner: 'A', findings: [['rooting', 'left', 'not-elicited']] },
      { on: at(2), examiner: 'B', findings: [['rooting', 'left', 'elicited']] },
    ]);
    expect(found[2]!.raised).toEqual([]);
  });
});

describe('how much it asks for', () => {
  test.each<[number, ShortFinding, string]>([
    [11, ['moro', 'left', 'elicited'], 'discuss'], // persisting in every source
    [7, ['palmar-grasp', 'left', 'elicited'], 'discuss'], // every source has it gone by 6 months
    [5, ['rooting', 'midline', 'elicited'], 'watch'], // persisting in most
    [0, ['protective-backward', 'left', 'elicited'], 'watch'], // early in every source
    [4, ['moro', 'left', 'elicited'], 'fits'],
  ])('at %i months %j: %s', (month, finding, attention) => {
    expect(judgeAt(month, finding).attention).toBe(attention);
  });

  test('worst first', () => {
    const found = judgeAll([
      {
        on: at(1),
        findings: [
          ['sucking', 'midline', 'not-assessable'],
          ['moro', 'left', 'elicited'],
          ['atnr', 'left', 'brisk'],
          ['galant', 'left', 'obligatory'],
        ],
      },
    ]);
    expect(worstFirst(found).map((f) => f.attention)).toEqual([
      'discuss',
      'watch',
      'fits',
      'not-judged',
    ]);
  });
});
