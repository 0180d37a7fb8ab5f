/** English for the plan of a visit: open questions, and what is worth testing. */
import type { CivilDate } from '../../age/civil.ts';
import type { OpenQuestion } from '../../judge/plan.ts';
import { BY_DATE, dateWords, type When } from './ages.ts';

/** An open question with the dates from which an answer would be expected. */
export function questionSentence(
  question: OpenQuestion,
  on: CivilDate,
  when: When = BY_DATE,
): string {
  const awaited = question.awaits === 'to-appear' ? 'there' : 'gone';
  const { most, every } = question;
  if (!most || !every) return `No source dates when it should be ${awaited}.`;
  const past = (date: CivilDate): string => (date <= on ? 'since' : 'from');
  return most === every
    ? `Every source that dates it would have it ${awaited} ${past(every)} ${when.bare(every)}.`
    : `Most sources would have it ${awaited} ${past(most)} ${when.bare(most)}, every one ${past(every)} ${when.bare(every)}.`;
}

export const plan = {
  title: 'Next',
  nothing: 'Nothing would tell much on this date.',
  upsetting: 'Last, since it may upset',
  questions: 'Open questions',
  noQuestions: 'No question is open.',
  before: (born: CivilDate): string => `Choose a date from the birth on ${dateWords(born)} on.`,
  both: 'both sides',
};
