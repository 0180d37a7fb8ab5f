/** English for the pages of questions: choosing, answering, on a stage and on paper. */
import type { Difficulty } from '../question.ts';
import { counted } from './quiz.ts';

/** The letter of a choice: A, B, C, D. */
export const letter = (index: number): string => 'ABCD'.charAt(index);

export const page = {
  title: 'Questions',
  lead: 'Made from the atlas. Only points on which all chosen sources agree are asked, so that the answers are not in dispute. The wrong choices are close to the right one.',
  kinds: 'Type of question',
  allKinds: 'All types',
  groups: 'Reflexes',
  allGroups: 'All groups',
  difficulty: 'Difficulty',
  count: 'Number of questions',
  badCount: 'Write a whole number from 1 to 60.',
  seed: 'Set number',
  seedHelp: 'The same number with the same choices gives the same questions again.',
  badSeed: 'Write a whole number from 0 to 999999.',
  begin: 'Start',
  stage: 'Present to a class',
  paper: 'On paper, with a key',
  review: 'To review',
  reviewNone: 'Nothing is to be reviewed today.',
  reviewDue: (n: number): string =>
    n === 1 ? '1 subject is to be reviewed today.' : `${n} subjects are to be reviewed today.`,
  reviewBegin: 'Review them',
  more: (n: number): string => `and ${n} more`,
  learnt: (subjects: number, right: number, asked: number): string =>
    `${counted(subjects, 'subject')} seen so far, ${right} of ${counted(asked, 'answer')} right. Saved in this browser only.`,
  forget: 'Forget all answers',
  forgotten: 'All answers forgotten. They stay in the bin for 30 days.',
  unforgotten: 'Undone: the answers are back.',
  fewer: (got: number, wanted: number): string =>
    got === 0
      ? 'The chosen sources agree on nothing that could be asked here. Choose more types, groups or sources.'
      : `${counted(got, 'question')} instead of ${wanted}: on the rest the chosen sources do not agree, or too few of them give an age.`,
  place: (at: number, of: number): string => `Question ${at} of ${of}`,
  keys: (n: number): string => `Keys 1 to ${n} answer, Enter continues.`,
  isRight: 'Right.',
  isWrong: (answer: string): string => `Not right. The answer is: ${answer}.`,
  onward: 'Next question',
  finish: 'Show the result',
  resultTitle: 'Result',
  result: (right: number, of: number): string => `${right} of ${of} right.`,
  wrongOnes: 'To look at again',
  again: 'The same set again',
  other: 'Another set',
  back: 'All questions',
  why: 'Why',
  sources: 'Sources',
  limbsFrom:
    'Limbs, stimulus and position are those of the atlas. The chart shows when the sources have each appear and integrate.',
  chart: 'On the chart',
  set: (seed: number): string => `Set ${seed}`,
  setLine: (seed: number, difficulty: Difficulty, n: number): string =>
    `Set ${seed}, ${difficulty}, ${counted(n, 'question')}`,
  caution:
    'Answers follow the published ages of the chosen sources. They are neither a diagnosis nor a rule for an infant.',
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
