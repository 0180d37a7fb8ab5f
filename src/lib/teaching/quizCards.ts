/** When a subject is asked again: spaced repetition, by ts-fsrs. */
import { createEmptyCard, fsrs, Rating, State, type Card, type CardInput } from 'ts-fsrs';
import * as v from 'valibot';

const number = v.pipe(v.number(), v.finite());
const whole = v.pipe(v.number(), v.integer(), v.minValue(0));
const moment = v.pipe(v.string(), v.isoTimestamp());

const cardShape = v.object({
  due: moment,
  stability: number,
  difficulty: number,
  elapsed_days: number,
  scheduled_days: number,
  learning_steps: number,
  reps: whole,
  lapses: whole,
  state: v.enum(State),
  last_review: v.nullable(moment),
});
type KeptCard = v.InferOutput<typeof cardShape>;

/** What is kept, read as hostile: a subject that is not understood is forgotten, the others stay. */
export const subjectShape = v.object({ card: cardShape, right: whole, asked: whole });
export type Subject = v.InferOutput<typeof subjectShape>;

/** Days, not minutes, and nothing by chance. */
const scheduler = fsrs({ enable_short_term: false, enable_fuzz: false });

const keptCard = ({ due, last_review, ...rest }: Card): KeptCard => ({
  ...rest,
  due: due.toISOString(),
  last_review: last_review?.toISOString() ?? null,
});

/** A subject after an answer: a wrong one comes back soon, a right one later and later. */
export function reviewed(before: Subject | undefined, isRight: boolean, now: Date): Subject {
  const card: CardInput = before?.card ?? createEmptyCard(now);
  const after = scheduler.next(card, now, isRight ? Rating.Good : Rating.Again).card;
  return {
    card: keptCard(after),
    right: (before?.right ?? 0) + (isRight ? 1 : 0),
    asked: (before?.asked ?? 0) + 1,
  };
}

/** The first moment of the next day, ms: what is due before it is to be reviewed today. */
export const endOfDay = (now: Date): number =>
  new Date(now.getFullYear(), now.getMonth(), now.getDate() + 1).getTime();

/** The clock, asked when a question is answered and for what is due today. */
export const now = (): Date => new Date();
