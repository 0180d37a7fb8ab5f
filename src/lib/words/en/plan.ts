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
  const awaited = question.awaits === 'to-appear' ? 'onset' : 'integration';
  const { most, every } = question;
  if (!most || !every) return `No source gives an age by which to expect ${awaited}.`;
  const says = (date: CivilDate, what: string): string =>
    `${date <= on ? `have expected ${what} since` : `expect ${what} by`} ${when.bare(date)}`;
  if (most === every) return `All sources that give an age ${says(every, awaited)}.`;
  return `Most sources ${says(most, awaited)}, all that give an age ${says(every, 'it')}.`;
}

export const plan = {
  title: 'Plan visit',
  questions: 'Open questions',
  noQuestions: 'No question is open.',
  before: (born: CivilDate): string => `Choose a date on or after the birth on ${dateWords(born)}.`,
  both: 'both sides',
};
