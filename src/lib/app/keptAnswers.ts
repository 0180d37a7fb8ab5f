/** The answers of this page, loaded where questions are asked or a backup is taken. */
import { aside, small, storage } from './app.svelte.ts';
import { QUESTIONS } from '../platform/storageKeys.ts';
import { QuizProgress } from '../teaching/quizProgress.svelte.ts';
import { joinUndo, type Stroked } from '../platform/undoing.ts';

export const progress = new QuizProgress(storage);
small[QUESTIONS] = () => progress.kept.text;

/** The answers that were forgotten last, and their row in the bin. */
let forgotten = '';
let row: Promise<string | undefined> = Promise.resolve(undefined);

function intoBin(): void {
  row = aside.put({ table: 'answers', id: 'answers', text: forgotten });
}

function outOfBin(): void {
  void row.then((one) => (one === undefined ? undefined : aside.forGood([one])));
}

/** Undo and redo of the answers, with what lies in the bin in step. */
export const answers: Stroked = {
  history: progress.kept.history,
  undo: () => {
    const did = progress.kept.undo();
    if (did === 'forgotten') outOfBin();
    else if (did === 'from-bin') intoBin();
  },
  redo: () => {
    const did = progress.kept.redo();
    if (did === 'forgotten') intoBin();
    else if (did === 'from-bin') outOfBin();
  },
};
joinUndo(answers);

/** Forgets every answer: they lie in the bin, and undo brings them back. */
export function forgetAnswers(): void {
  const { text } = progress.kept;
  if (text === undefined) return;
  forgotten = text;
  progress.forget();
  intoBin();
}

/** Brings answers back out of the bin. */
export function bringAnswersBack(item: { row: string; text: string }): void {
  progress.bringBack(item.text);
  forgotten = item.text;
  row = Promise.resolve(item.row);
  outOfBin();
}
