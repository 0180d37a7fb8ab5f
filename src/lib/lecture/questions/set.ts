/** A set of questions: dealt from a seed, so that it can be given again, none of them twice. */
import { chanceOf, type Chance } from '../random.ts';
import { arithmetic } from './arithmetic.ts';
import type { Maker } from './deal.ts';
import { apart, name } from './figures.ts';
import type { Ground } from './ground.ts';
import { does, limb } from './limbs.ts';
import { first, next, order } from './orders.ts';
import { born, phase } from './phases.ts';
import { KINDS, type Difficulty, type Question, type QuestionKind } from '../../words/question.ts';
import { verdict } from './verdicts.ts';

const MAKERS: Readonly<Record<QuestionKind, Maker>> = {
  first,
  next,
  order,
  phase,
  born,
  verdict,
  name,
  limb,
  does,
  apart,
  arithmetic,
};

export interface SetOptions {
  seed: number;
  /** How many are wanted; there may be fewer, never a doubtful one. */
  count: number;
  /** None: every kind. */
  kinds?: readonly QuestionKind[];
  difficulty: Difficulty;
}

const SPACE = '|';

/** A question about a subject (`kind|subject`) as chance has it; undefined where none is beyond dispute. */
export function questionOn(
  subject: string,
  ground: Ground,
  chance: Chance,
  difficulty: Difficulty,
  seed: number,
): Question | undefined {
  const at = subject.indexOf(SPACE);
  const kind = KINDS.find((one) => one === subject.slice(0, at));
  const draft = kind && MAKERS[kind].make(subject.slice(at + 1), ground, chance, difficulty);
  if (!draft) return undefined;
  const { round, ...rest } = draft;
  return { subject, key: `${subject}${SPACE}${round}`, seed, difficulty, ...rest };
}

/** After so many rounds without a new question a set is as long as it gets. */
const FRUITLESS_ROUNDS = 3;

/** A set: the kinds take turns, subjects come in an order by chance, and again only when all were had. */
export function questionSet(ground: Ground, options: SetOptions): Question[] {
  const { seed, count, kinds = [], difficulty } = options;
  const chance = chanceOf(seed);
  const wanted = KINDS.filter((kind) => kinds.length === 0 || kinds.includes(kind));
  const deal = (): Map<QuestionKind, string[]> =>
    new Map(
      wanted.map((kind) => [
        kind,
        chance.shuffled(MAKERS[kind].subjects(ground)).map((one) => `${kind}${SPACE}${one}`),
      ]),
    );
  const questions: Question[] = [];
  const had = new Set<string>();
  let left = deal();
  let fruitless = 0;
  while (questions.length < count && fruitless < FRUITLESS_ROUNDS) {
    const before = questions.length;
    for (const kind of chance.shuffled(wanted)) {
      const subjects = left.get(kind) ?? [];
      // on to the first subject on which a new question can be asked
      for (let subject = subjects.pop(); subject; subject = subjects.pop()) {
        if (questions.length >= count) break;
        const question = questionOn(subject, ground, chance, difficulty, seed);
        if (!question || had.has(question.key)) continue;
        had.add(question.key);
        questions.push(question);
        break;
      }
    }
    if (questions.length > before) fruitless = 0;
    else if ([...left.values()].every((subjects) => subjects.length === 0)) {
      fruitless++;
      left = deal();
    }
  }
  return questions;
}
