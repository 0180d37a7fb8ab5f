/** The questions of the page: dealt under the sources in force, with what was answered so far. */
import { chanceOf } from '../lecture/random.ts';
import { groundOf, type Ground } from '../lecture/questions/ground.ts';
import type { Question } from '../words/question.ts';
import { questionOn, questionSet } from '../lecture/questions/set.ts';
import type { Group } from '../atlas/types.ts';
import { atlas, judgement, settings } from './app.svelte.ts';
import type { QuizWish } from '../teaching/quizAddress.ts';

const ground = (groups: readonly Group[] = []): Ground =>
  groundOf(atlas, judgement.sheet, groups, settings.limits);

/** The set that is wished for, under the sources in force. */
export const questionsFor = (wish: QuizWish): Question[] => questionSet(ground(wish.groups), wish);

/** A new question on each subject that is to be reviewed; those that can no longer be asked fall away. */
export function reviewOf(subjects: readonly string[], seed: number): Question[] {
  const chance = chanceOf(seed);
  const on = ground();
  return subjects.flatMap((subject) => {
    for (const difficulty of ['medium', 'hard', 'easy'] as const) {
      const question = questionOn(subject, on, chance, difficulty, seed);
      if (question) return [question];
    }
    return [];
  });
}
