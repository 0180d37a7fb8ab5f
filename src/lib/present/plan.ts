/** The plan as it is read: the date it is made for, and the two sides of a question told together. */
import type { CivilDate } from '../age/civil.ts';
import type { Side } from '../atlas/types.ts';
import type { Case } from '../case/case.ts';
import { testOf } from '../case/finding.ts';
import { AGAIN_DAYS } from '../judge/nextVisit.ts';
import type { OpenQuestion } from '../judge/plan.ts';
import { USUAL_MONTHS } from '../judge/reading/constants.ts';

/**
 * The date a plan is first made for: that of the sheet kept for a visit to come, else today, or the
 * last visit where today lies before it. An invented child does not grow older, so its plan is made for
 * the last visit.
 */
export function planDate({ child, visits, sheet }: Case, today: CivilDate): CivilDate {
  const last = visits.at(-1)?.on;
  if (sheet && (!last || sheet.on >= last)) return sheet.on;
  if (last && (child.invented || today < last)) return last;
  return today < child.birth.born ? child.birth.born : today;
}

/** How long a next visit may wait, as it is said; days but for the usual time. */
export const WAITS = { ...AGAIN_DAYS, usualMonths: USUAL_MONTHS };

/** Questions that await the same of both sides, asked once. */
export function questionsTogether(
  questions: readonly OpenQuestion[],
): { question: OpenQuestion; sides: Side[] }[] {
  const asked: { question: OpenQuestion; sides: Side[] }[] = [];
  for (const question of questions) {
    const same = asked.find(
      ({ question: q }) =>
        testOf(q) === testOf(question) &&
        q.awaits === question.awaits &&
        q.most === question.most &&
        q.every === question.every,
    );
    if (same) same.sides.push(question.side);
    else asked.push({ question, sides: [question.side] });
  }
  return asked;
}
