import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { DEFAULT_LIMITS } from '../../src/lib/age/clocks.ts';
import { agesAt } from '../../src/lib/case/case.ts';
import { coursesOf } from '../../src/lib/case/course.ts';
import { changesAt } from '../../src/lib/judge/changes.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { planFor } from '../../src/lib/judge/plan.ts';
import { awaitedEntries } from '../../src/lib/exchange/expectedDates.ts';
import { changesTogether, coursesTogether, gridOf } from '../../src/lib/present/course.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { questionsTogether } from '../../src/lib/present/plan.ts';
import { en } from '../../src/lib/words/en.ts';
import { childCase } from '../support/kestrel.ts';

const options = { atlas: ATLAS, sheet: sheetOf(ATLAS), limits: DEFAULT_LIMITS };

describe('the two sides', () => {
  const record = childCase({ born: '2026-01-01', gestation: '40w0d' }, [
    {
      on: '2026-02-01',
      findings: [
        ['moro', 'left', 'elicited'],
        ['moro', 'right', 'elicited'],
        ['palmar-grasp', 'left', 'elicited'],
        ['palmar-grasp', 'right', 'elicited'],
      ],
    },
    {
      on: '2026-08-01',
      findings: [
        ['moro', 'left', 'not-elicited'],
        ['moro', 'right', 'not-elicited'],
        ['palmar-grasp', 'left', 'not-elicited'],
        ['palmar-grasp', 'right', 'weak'],
      ],
    },
  ]);
  const visits = judgeCase(record, options);

  test('are told together where they say the same, apart where they do not', () => {
    const told = changesTogether(changesAt(visits[1]!, visits).changed);
    expect(told.map(({ one, sides }) => [one.reflex.id, sides, one.move])).toEqual([
      ['moro', ['left', 'right'], 'went'],
      ['palmar-grasp', ['left'], 'went'],
      ['palmar-grasp', ['right'], 'weaker'],
    ]);
    expect(en.course.changeSentence(told[0]!.one)).toBe(
      'not elicited now, elicited on 1 February 2026; as expected.',
    );
  });

  test('have their courses told in words', () => {
    const courses = coursesOf(record.visits, (on) => agesAt(record, on, DEFAULT_LIMITS));
    expect(
      coursesTogether(courses).map(({ one, sides }) => [
        one.reflex,
        en.course.sideWords(sides),
        en.course.courseWords(one),
      ]),
    ).toEqual([
      ['moro', 'both sides', 'integrated between 1 February 2026 and 1 August 2026'],
      ['palmar-grasp', 'left', 'integrated between 1 February 2026 and 1 August 2026'],
      ['palmar-grasp', 'right', 'present (appeared by 1 February 2026)'],
    ]);
  });
});

describe('the grid', () => {
  test('has a row for each reflex looked at, in the order of the atlas, and a cell for each visit', () => {
    const record = demoCase(ATLAS);
    const visits = judgeCase(record, options);
    const rows = gridOf(visits, [], ATLAS);
    const looked = new Set(record.visits.flatMap((v) => v.findings.map((f) => f.reflex)));
    expect(new Set(rows.map(({ id }) => id))).toEqual(looked);
    const order = [...ATLAS.reflexes.keys()];
    const places = rows.map(({ id }) => order.indexOf(id));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    const cells = rows.flatMap((row) => row.cells.flat());
    expect(cells.length).toBe(record.visits.flatMap((v) => v.findings).length);
    for (const row of rows) expect(row.cells.length).toBe(visits.length);
    for (const { judged } of cells) expect(judged).toBeDefined();
  });

  test('keeps a reflex that is not at hand, last and not judged', () => {
    const record = childCase({ born: '2026-01-01', gestation: '40w0d' }, [
      {
        on: '2026-02-01',
        findings: [
          ['own-gone', 'left', 'elicited'],
          ['moro', 'left', 'elicited'],
        ],
      },
    ]);
    const rows = gridOf(judgeCase(record, options), [], ATLAS);
    expect(rows.map(({ id }) => id)).toEqual(['moro', 'own-gone']);
    expect(rows[1]).toMatchObject({ reflex: undefined, cells: [[{ judged: undefined }]] });
  });
});

test('what is awaited makes one calendar entry for each date, without the label', () => {
  const record = demoCase(ATLAS);
  const { questions } = planFor(record, record.visits.at(-1)!.on, options);
  const asked = questionsTogether(questions);
  const entries = awaitedEntries(
    'a1',
    asked.map(({ question, sides }) => ({ question, sides })),
    ATLAS,
  );
  const dates = asked.flatMap(({ question: { most, every } }) => [
    ...(most && most !== every ? [most] : []),
    ...(every ? [every] : []),
  ]);
  expect(entries.map(({ on }) => on).sort()).toEqual(dates.sort());
  expect(entries.length).toBeGreaterThan(2);
  expect(new Set(entries.map(({ uid }) => uid)).size).toBe(entries.length);
  expect(JSON.stringify(entries)).not.toContain(record.child.label);
});
