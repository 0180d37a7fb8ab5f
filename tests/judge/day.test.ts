/** A day of two examiners: what either of them saw counts, and what they agreed on is judged in its place. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { agreedKey, type Case } from '../../src/lib/case/case.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { mergeCases } from '../../src/lib/case/merge.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { caseText, rawOf } from '../../src/lib/case/raw.ts';
import { settled } from '../../src/lib/case/settled.ts';
import type { RawCase } from '../../src/lib/case/shape.ts';
import { dayOf } from '../../src/lib/judge/day.ts';
import { CaseJudge, judgeCase, sheetOf, type JudgedVisit } from '../../src/lib/judge/judge.ts';
import { nextVisit } from '../../src/lib/judge/nextVisit.ts';
import { planFor } from '../../src/lib/judge/plan.ts';
import { differOn } from '../../src/lib/present/differ.ts';
import { entriesOf, type Entry } from '../../src/lib/present/verdictEntries.ts';
import { findingRows } from '../../src/lib/present/findingRows.ts';
import { reportOf, reportText } from '../../src/lib/present/report.ts';
import { en } from '../../src/lib/words/en.ts';
import { anyCase } from '../support/anyCase.ts';
import { childCase, type ShortFinding } from '../support/kestrel.ts';
import { runs } from '../support/runs.ts';

const options = { atlas: ATLAS, sheet: sheetOf(ATLAS, 'default') };
const TERM = { born: '2026-01-01', gestation: '40w0d' };
const ON = '2026-03-15';
const RUNS = { seed: 23, numRuns: runs(150, 30) };

const tonic = (left: ShortFinding[2], right = left): ShortFinding[] => [
  ['atnr', 'left', left],
  ['atnr', 'right', right],
];

/** Amy saw an obligatory response, Zed an ordinary one; Zed's visit comes last in the record. */
const twice = (agreed?: RawCase['agreed']): Case => {
  const raw = rawOf(
    childCase(TERM, [
      { on: ON, examiner: 'Amy', findings: tonic('obligatory', 'elicited') },
      { on: ON, examiner: 'Zed', findings: tonic('elicited') },
    ]),
  );
  const parsed = parseRaw({ ...raw, ...(agreed ? { agreed } : {}) }, ATLAS);
  if (!parsed.ok) throw new Error(parsed.problems.map(en.problems.problemWords).join(' '));
  return parsed.value;
};

const AGREED = {
  on: ON,
  reflex: 'atnr',
  side: 'left',
  response: 'elicited',
  state: 'quiet-alert',
  note: 'Seen again together.',
};

const dayIn = (record: Case): { visits: JudgedVisit[]; shown: JudgedVisit; entries: Entry[] } => {
  const visits = judgeCase(record, options);
  const shown = visits.at(-1)!;
  return { visits, shown, entries: entriesOf(dayOf(shown, visits).visits, []) };
};

const reportIn = (record: Case, withNames = true): string => {
  const { visits, shown } = dayIn(record);
  return reportText(reportOf({ record, visits, shown, options, withNames }));
};

describe('two examiners of a day, one of whom saw an obligatory response', () => {
  test.each([0, 1])('it is in the list to review, whichever visit is shown: %i', (at) => {
    const visits = judgeCase(twice(), options);
    const [entry] = entriesOf(dayOf(visits[at]!, visits).visits, []);
    expect(entry?.attention).toBe('discuss');
    expect(entry!.lead.finding.response).toBe('obligatory');
    expect(differOn(visits, 'atnr')).toMatchObject([
      { side: 'left', agreed: undefined, answers: [{ examiner: 'Amy' }, { examiner: 'Zed' }] },
    ]);
  });

  test('it is in the report, with who saw what, and the difference once', () => {
    const said = reportIn(twice());
    expect(said).toMatch(
      /Asymmetrical tonic neck.* \(discuss with the team\): Obligatory on the left/,
    );
    expect(reportIn(twice(), false)).not.toMatch(/Amy|Zed/);
    expect(
      said.split('The examiners differ on the left: Amy obligatory, Zed elicited.'),
    ).toHaveLength(2);
  });

  test('it pulls the next visit forward, and the plan tests it again', () => {
    const record = twice();
    const judge = new CaseJudge(record, options);
    expect(nextVisit(judge, options)?.why).toMatchObject({ code: 'discuss', reflexes: ['atnr'] });
    const { lines } = planFor(record, '2026-03-29' as never, options);
    const line = lines.find(({ reflex }) => reflex.id === 'atnr');
    expect(line?.why.find(({ code }) => code === 'open-question')).toMatchObject({
      flags: expect.arrayContaining(['obligatory']) as unknown,
    });
  });
});

describe('one agreed answer beside both', () => {
  test('is what judgement reads; both answers stay', () => {
    const record = twice([AGREED]);
    const { entries, visits } = dayIn(record);
    const [entry] = entries;
    expect(entry?.attention).toBe('fits');
    expect(entry?.lead.finding.response).toBe('elicited');
    expect(differOn(visits, 'atnr')).toMatchObject([{ side: 'left', agreed: 'elicited' }]);
    expect(visits.map(({ visit }) => visit.findings[0]?.response)).toEqual([
      'obligatory',
      'elicited',
    ]);
    expect(reportIn(record)).toContain('Amy obligatory, Zed elicited. Agreed: elicited.');
  });

  test('may be that of the one who saw more', () => {
    const { entries } = dayIn(twice([{ ...AGREED, response: 'obligatory' }]));
    expect(entries[0]?.attention).toBe('discuss');
    expect(entries[0]?.sides.map(({ finding }) => finding.response)).toEqual([
      'obligatory',
      'obligatory',
      'elicited',
      'elicited',
    ]);
  });

  test('the table of findings has both answers, and the agreed one beside each', () => {
    const record = twice([AGREED]);
    const rows = findingRows([{ record, visits: judgeCase(record, options) }]);
    expect(
      rows.map(({ examiner, side, response, agreed }) => [examiner, side, response, agreed]),
    ).toEqual([
      ['Amy', 'left', 'obligatory', 'elicited'],
      ['Amy', 'right', 'elicited', ''],
      ['Zed', 'left', 'elicited', 'elicited'],
      ['Zed', 'right', 'elicited', ''],
    ]);
  });

  test.each([
    [{ ...AGREED, response: 'strong' }, 'Agreed answer 1 (atnr), response'],
    [{ ...AGREED, side: 'midline' }, 'Agreed answer 1 (atnr), side'],
    [{ ...AGREED, reflex: 'atnrr' }, 'Agreed answer 1 (atnrr), reflex'],
    [{ ...AGREED, on: '2026-02-30' }, 'Agreed answer 1 (atnr)'],
    [{ ...AGREED, on: '2025-12-31' }, 'Agreed answer 1 (atnr)'],
    [{ ...AGREED, note: '<b>x</b>' }, 'Agreed answer 1 (atnr), note'],
  ])('is read strictly: %o', (one, where) => {
    const text = JSON.stringify({ ...rawOf(twice()), agreed: [one] });
    const parsed = parseCaseText(text, ATLAS);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok)
      expect(parsed.problems.map(en.problems.problemWords).join(' ')).toContain(where);
  });

  test('is one at most of a day, test and side', () => {
    const text = JSON.stringify({ ...rawOf(twice()), agreed: [AGREED, AGREED] });
    expect(parseCaseText(text, ATLAS).ok).toBe(false);
  });

  test('two that were set in two windows are both kept; one set twice is asked about', () => {
    const base = rawOf(twice());
    const right = { ...AGREED, side: 'right' };
    const both = mergeCases(base, { ...base, agreed: [AGREED] }, { ...base, agreed: [right] });
    expect(both.points).toEqual([]);
    expect(both.raw.agreed).toHaveLength(2);
    const weak = { ...AGREED, response: 'weak' };
    const { points } = mergeCases(base, { ...base, agreed: [AGREED] }, { ...base, agreed: [weak] });
    expect(points.map((point) => en.keeping.pointWords(point, (id) => id))).toEqual([
      'Agreed answer of 15 March 2026: atnr, left',
    ]);
  });
});

test('on any record: it goes through its file, and judging it is judging what was agreed', () => {
  let agreed = 0;
  fc.assert(
    fc.property(anyCase(), (record) => {
      const parsed = parseCaseText(caseText(record), ATLAS);
      expect(parsed).toEqual({ ok: true, value: record });
      const read = settled(record);
      agreed += record.agreed.length;
      const [once, again] = [record, { ...read, agreed: [] }].map((one) =>
        judgeCase(one, options).map(({ findings }) =>
          findings.map(({ finding, attention }) => [finding, attention]),
        ),
      );
      expect(once).toEqual(again);
      for (const visit of read.visits)
        for (const finding of visit.findings) {
          const key = agreedKey({ ...finding, on: visit.on });
          const one = record.agreed.find((of) => agreedKey(of) === key);
          if (one) expect(finding.response).toBe(one.response);
        }
    }),
    RUNS,
  );
  expect(agreed).toBeGreaterThan(RUNS.numRuns / 3);
});
