/** Choosing among near and far, and putting the right choice among the wrong ones. */
import type { Chance } from '../random.ts';
import type { Choice, Difficulty, Stem, Why } from '../../words/question.ts';
import type { Ground } from './ground.ts';

/** A question before it is given its place in a set. */
export interface Draft {
  stem: Stem;
  choices: readonly Choice[];
  right: number;
  why: Why;
  /** What makes two questions on one subject different: the rounded age, or the numbers. */
  round: string;
}

/** One kind of question: what it can be about, and how one is made. */
export interface Maker {
  subjects(ground: Ground): readonly string[];
  /** Undefined where nothing on the subject is beyond dispute at that difficulty. */
  make(subject: string, ground: Ground, chance: Chance, difficulty: Difficulty): Draft | undefined;
}

export const WRONG = 3;
/** Fewer wrong choices than this make no question. */
export const LEAST_WRONG = 2;

/**
 * Some of a list that runs from near to far: the near end for hard, the middle, or the far end for
 * easy, never fewer than are needed where there are so many.
 */
export function band<T>(nearFirst: readonly T[], difficulty: Difficulty, needed: number): T[] {
  const size = Math.min(nearFirst.length, Math.max(needed, Math.ceil(nearFirst.length / 3)));
  const room = nearFirst.length - size;
  const start = difficulty === 'hard' ? 0 : difficulty === 'medium' ? Math.floor(room / 2) : room;
  return nearFirst.slice(start, start + size);
}

/** The right choice among up to three wrong ones, in an order by chance. */
export function dealt(
  right: Choice,
  wrong: readonly Choice[],
  chance: Chance,
): Pick<Draft, 'choices' | 'right'> | undefined {
  if (wrong.length < LEAST_WRONG) return undefined;
  const choices = chance.shuffled([right, ...wrong.slice(0, WRONG)]);
  return { choices, right: choices.indexOf(right) };
}
