import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { DEFAULT_LIMITS } from '../../src/lib/age/clocks.ts';
import { rawOf } from '../../src/lib/case/raw.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { reportOf, reportText } from '../../src/lib/present/report.ts';
import { en } from '../../src/lib/words/en.ts';

const options = { atlas: ATLAS, sheet: sheetOf(ATLAS), limits: DEFAULT_LIMITS };

/** The demo child with every free text filled with a word of its own. */
function telling() {
  const raw = rawOf(demoCase(ATLAS));
  const parsed = parseRaw(
    {
      ...raw,
      child: { ...raw.child, label: 'Labelword' },
      visits: raw.visits.map((visit) => ({
        ...visit,
        examiner: 'Examinerword',
        note: 'Noteword',
        findings: visit.findings.map((finding) => ({ ...finding, note: 'Findingword' })),
      })),
      question: 'Questionword',
      tags: ['Tagword'],
      decisions: [
        {
          id: '5b0c6a6e-0f3e-4f53-8a4f-3c0a3c3f1c11',
          on: '2026-05-11',
          text: 'Decisionword',
          who: 'Whoword',
          by: '2026-06-01',
          done: false,
        },
      ],
      family: {
        language: 'en',
        pronoun: 'she',
        calledName: 'Calledword',
        clinic: { name: 'Clinicword', phone: 'Phoneword' },
        pages: [
          { visit: '', edits: [{ key: 'title', language: 'en', text: 'Editword', over: '' }] },
        ],
      },
    },
    ATLAS,
  );
  if (!parsed.ok) throw new Error(parsed.problems.map(en.problems.problemWords).join('\n'));
  return parsed.value;
}

function text(withNames: boolean): string {
  const record = telling();
  const visits = judgeCase(record, options);
  return reportText(reportOf({ record, visits, shown: visits.at(-1)!, options, withNames }));
}

describe('with names', () => {
  test('every free text, the label and the dates are in it, and it says so', () => {
    const said = text(true);
    for (const word of ['Labelword', 'Examinerword', 'Noteword', 'Findingword', 'Questionword'])
      expect(said).toContain(word);
    for (const word of ['Decisionword', 'Whoword', '11 May 2026', '4 October 2025'])
      expect(said).toContain(word);
    expect(said).toContain(en.report.report.named);
  });

  test('its dates have one form', () => {
    expect(text(true)).not.toMatch(/\d{4}-\d{2}-\d{2}/);
  });

  test('each finding to review has its reason and what to do, and the plan its date', () => {
    const record = telling();
    const visits = judgeCase(record, options);
    const { sections } = reportOf({
      record,
      visits,
      shown: visits.at(-1)!,
      options,
      withNames: true,
    });
    const [first] = sections;
    expect(first?.heading).toMatch(/^Findings to review: \d+ to discuss/);
    expect(first?.review?.length).toBeGreaterThan(2);
    for (const { said, todo } of first!.review!) {
      expect(said).not.toBe('');
      expect(todo).toMatch(/Look again by \d+ \w+ 2026\.$/);
    }
    const plan = sections.find(({ heading }) => heading === en.reportPage.plan);
    expect(plan?.items[0]).toBe('Next visit by 25 May 2026.');
    expect(sections.map(({ on }) => on)).toEqual(
      sections
        .map(({ on }) => on)
        .toSorted()
        .reverse(),
    );
  });
});

describe('without names', () => {
  test('no free text, no label and no calendar date is left', () => {
    const said = text(false);
    expect(said).not.toMatch(/\w+word/);
    // a source may carry a year in its name; a day, a month with a year, or an ISO date may not stand
    expect(said).not.toMatch(/\d{4}-\d{2}-\d{2}/);
    expect(said).not.toMatch(
      /(January|February|March|April|May|June|July|August|September|October|November|December) \d/,
    );
    expect(said).toContain(en.report.report.unnamed);
  });

  test('ages stand in their place', () => {
    const said = text(false);
    expect(said).toContain('Seen at 5 mo 1 wk corrected.');
    expect(said).toContain('elicited at 3 mo 1 wk corrected');
  });
});

test.each([true, false])('it carries sources, the correction rule and the caution: %s', (names) => {
  const said = text(names);
  expect(said).toContain(en.judge.CAUTION);
  expect(said).toContain('the corrected age counts');
  expect(said).toMatch(/Judged by \d+ sources, \d+ voices\./);
  expect(said).toMatch(/Measured in infants: .*Allen & Capute 1986/);
  expect(said).not.toMatch(/diagnosed|abnormal/i);
});

test('every finding of the visit stands in it, the sides together where they are alike', () => {
  const record = demoCase(ATLAS);
  const visits = judgeCase(record, options);
  const shown = visits.at(-1)!;
  const { sections } = reportOf({ record, visits, shown, options, withNames: true });
  const lines = sections.find(({ heading }) => heading === en.report.report.findings)!.items;
  for (const { reflex } of shown.visit.findings)
    expect(lines.some((line) => line.startsWith(ATLAS.reflexes.get(reflex)!.short))).toBe(true);
  const sides = lines.reduce((n, line) => n + (line.includes('both sides') ? 2 : 1), 0);
  expect(sides).toBe(shown.visit.findings.length);
});
