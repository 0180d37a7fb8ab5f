/** The courses of a record: what several visits and examiners together say of one reflex and side. */
import { describe, expect, test } from 'vitest';
import { agesOn } from '../../src/lib/age/clocks.ts';
import { answersOf, coursesOf, milestoneReached } from '../../src/lib/case/course.ts';
import { childCase, type ShortVisit } from '../support/kestrel.ts';

const of = (visits: ShortVisit[]) => {
  const { child, visits: seen } = childCase({ born: '2026-01-01', gestation: '40w0d' }, visits);
  return { seen, ages: (on: Parameters<typeof agesOn>[1]) => agesOn(child.birth, on) };
};
const courses = (...visits: ShortVisit[]) => {
  const { seen, ages } = of(visits);
  return coursesOf(seen, ages);
};

describe('the courses of a record', () => {
  test('are one for each reflex and side', () => {
    const found = courses({
      on: '2026-02-01',
      findings: [
        ['moro', 'left', 'elicited'],
        ['moro', 'right', 'not-elicited'],
        ['atnr', 'left', 'elicited'],
      ],
    });
    expect(found.map(({ reflex, side, state }) => [reflex, side, state])).toEqual([
      ['moro', 'left', 'present'],
      ['moro', 'right', 'never-seen'],
      ['atnr', 'left', 'present'],
    ]);
  });

  test('a response that any examiner saw on a day was there that day', () => {
    for (const [first, second] of [
      ['elicited', 'not-elicited'],
      ['not-elicited', 'elicited'],
    ] as const) {
      const [course] = courses(
        { on: '2026-02-01', examiner: 'A', findings: [['moro', 'left', first]] },
        { on: '2026-02-01', examiner: 'B', findings: [['moro', 'left', second]] },
        { on: '2026-03-01', findings: [['moro', 'left', 'not-elicited']] },
      );
      expect(course).toMatchObject({
        state: 'gone',
        answers: 2,
        appeared: { after: null, by: { on: '2026-02-01' } },
        integrated: { after: { on: '2026-02-01' }, by: { on: '2026-03-01' } },
      });
    }
  });

  test('what gave no answer counts as no visit to it', () => {
    const [course] = courses(
      { on: '2026-02-01', findings: [['moro', 'left', 'elicited']] },
      { on: '2026-03-01', findings: [['moro', 'left', 'not-elicited', 'crying']] },
      { on: '2026-04-01', findings: [['moro', 'left', 'not-assessable']] },
    );
    expect(course).toMatchObject({ state: 'present', answers: 1 });
    const [none] = courses({ on: '2026-02-01', findings: [['moro', 'left', 'not-assessable']] });
    expect(none).toMatchObject({ state: 'no-answer', answers: 0, integrated: null });
  });

  test('each visit is placed at the age that counts on its day', () => {
    const [course] = courses({ on: '2026-02-10', findings: [['moro', 'left', 'elicited']] });
    expect(course?.appeared.by).toEqual({ on: '2026-02-10', axisDay: 280 + 40 });
  });
});

test('answers to several reflexes at once are merged by day, oldest first', () => {
  const { seen, ages } = of([
    { on: '2026-02-10', findings: [['galant', 'left', 'elicited']] },
    {
      on: '2026-01-11',
      findings: [
        ['moro', 'left', 'not-elicited'],
        ['atnr', 'left', 'weak'],
        ['stnr', 'midline', 'elicited'],
      ],
    },
  ]);
  const answers = answersOf(seen, ages, ({ reflex }) => reflex !== 'stnr');
  expect(answers).toEqual([
    { on: '2026-01-11', axisDay: 290, present: true },
    { on: '2026-02-10', axisDay: 320, present: true },
  ]);
  expect(answersOf(seen, ages, ({ reflex, side }) => reflex === 'moro' && side === 'left')).toEqual(
    [{ on: '2026-01-11', axisDay: 290, present: false }],
  );
});

test('a milestone is reached where any examiner saw it, and by that milestone alone', () => {
  const { seen, ages } = of([
    { on: '2026-07-01', findings: [], milestones: { sitting: false, crawling: true } },
    { on: '2026-09-01', examiner: 'A', findings: [], milestones: { sitting: true } },
    { on: '2026-09-01', examiner: 'B', findings: [], milestones: { sitting: false } },
  ]);
  expect(milestoneReached(seen, ages, 'sitting')).toMatchObject({
    after: { on: '2026-07-01' },
    by: { on: '2026-09-01' },
  });
  expect(milestoneReached(seen, ages, 'walking')).toEqual({ after: null, by: null });
});
