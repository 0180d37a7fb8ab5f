/** English for the pages of questions: choosing, answering, on a stage and on paper. */
import type { Difficulty } from '../question.ts';
import { counted } from './quiz.ts';

/** The letter of a choice: A, B, C, D. */
export const letter = (index: number): string => 'ABCD'.charAt(index);

export const page = {
  title: 'Questions',
  lead: 'Made from the atlas. Only what every chosen source agrees on is asked, so that no answer can be argued with; the wrong choices are near ones.',
  kinds: 'What is asked',
  allKinds: 'Everything',
  groups: 'Which reflexes',
  allGroups: 'All groups',
  difficulty: 'How near the wrong choices are',
  count: 'How many',
  badCount: 'Write a whole number from 1 to 60.',
  seed: 'Number of the set',
  seedHelp: 'The same number with the same choices gives the same questions again.',
  badSeed: 'Write a whole number from 0 to 999999.',
  begin: 'Begin',
  stage: 'On a screen for many',
  paper: 'On paper, with a key',
  review: 'To review',
  reviewNone: 'Nothing is to be reviewed today.',
  reviewDue: (n: number): string =>
    n === 1 ? '1 subject is to be reviewed today.' : `${n} subjects are to be reviewed today.`,
  reviewBegin: 'Review them',
  more: (n: number): string => `and ${n} more`,
  learnt: (subjects: number, right: number, asked: number): string =>
    `${counted(subjects, 'subject')} met so far; ${right} of ${counted(asked, 'answer')} right. Kept in this browser only.`,
  forget: 'Forget all answers',
  forgotten: 'All answers forgotten. They lie in the bin for 30 days.',
  unforgotten: 'Undone: the answers are back.',
  fewer: (got: number, wanted: number): string =>
    got === 0
      ? 'The chosen sources agree on nothing that could be asked of this. Choose more kinds, groups or sources.'
      : `${counted(got, 'question')} instead of ${wanted}: on the rest the chosen sources do not agree, or too few of them speak.`,
  place: (at: number, of: number): string => `Question ${at} of ${of}`,
  keys: (n: number): string => `Keys 1 to ${n} answer, Enter goes on.`,
  isRight: 'Right.',
  isWrong: (answer: string): string => `Not so. The answer is: ${answer}.`,
  onward: 'Next question',
  finish: 'See how it went',
  resultTitle: 'How it went',
  result: (right: number, of: number): string => `${right} of ${of} right.`,
  wrongOnes: 'To look at again',
  again: 'The same set again',
  other: 'Another set',
  back: 'All questions',
  why: 'Why',
  sources: 'Sources',
  limbsFrom:
    'Limbs, stimulus and position are those of the atlas; the chart shows when the sources have each come and go.',
  chart: 'On the chart',
  set: (seed: number): string => `Set ${seed}`,
  setLine: (seed: number, difficulty: Difficulty, n: number): string =>
    `Set ${seed}, ${difficulty}, ${counted(n, 'question')}`,
  caution:
    'Answers follow the published ages of the chosen sources; they are no diagnosis and no rule for an infant.',
  right: 'right',
  yours: 'your answer',
  print: 'Print',
  key: 'Answers',
  name: 'Name',
  reveal: 'Show the answer',
  previous: 'Back',
  stageKeys: 'Space, Enter or Page Down: the answer, then the next question. Page Up: back.',
  stageEnd: 'That was the last question.',
  leave: 'Leave',
};
