import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, parseCivil } from '../../src/lib/age/civil.ts';
import { courseOf, type Answer } from '../../src/lib/case/course.ts';

const start = parseCivil('2026-01-01')!;
/** Answers a month apart: + present, - not. */
const answers = (signs: string): Answer[] =>
  Array.from(signs).map((sign, i) => ({
    on: addDays(start, i * 30),
    axisDay: 280 + i * 30,
    present: sign === '+',
  }));

describe('a course is intervals, not points', () => {
  test.each([
    ['', 'no-answer', null, null, undefined, undefined],
    ['--', 'never-seen', 310, null, undefined, undefined],
    ['+', 'present', null, 280, 280, null],
    ['-+', 'present', 280, 310, 310, null],
    ['+-', 'gone', null, 280, 280, 310],
    ['-++--', 'gone', 280, 310, 340, 370],
    ['+-+', 'returned', null, 280, 340, null],
    ['+-+-', 'gone', null, 280, 340, 370],
  ])('%j: %s', (signs, state, after, by, last, gone) => {
    const course = courseOf(answers(signs));
    expect(course.state).toBe(state);
    expect(course.appeared.after?.axisDay ?? null).toBe(after);
    expect(course.appeared.by?.axisDay ?? null).toBe(by);
    expect(course.integrated?.after?.axisDay).toBe(last);
    expect(course.integrated ? (course.integrated.by?.axisDay ?? null) : undefined).toBe(gone);
  });

  test('an interval never runs backwards, and integration is only told after it was seen', () => {
    let closed = 0;
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 8 }), (present) => {
        const course = courseOf(answers(present.map((p) => (p ? '+' : '-')).join('')));
        for (const interval of [course.appeared, course.integrated])
          if (interval?.after && interval.by) {
            closed += 1;
            expect(interval.after.axisDay).toBeLessThan(interval.by.axisDay);
          }
        expect(course.integrated === null).toBe(!present.includes(true));
      }),
    );
    expect(closed).toBeGreaterThan(0);
  });
});
