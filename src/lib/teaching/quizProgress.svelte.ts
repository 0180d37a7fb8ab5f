/** What was answered, kept on this machine, and what of it is to be reviewed when. */
import * as v from 'valibot';
import { endOfDay, reviewed, subjectShape, type Subject } from './quizCards.ts';
import { QUESTIONS } from '../platform/storageKeys.ts';
import { partsStepped } from '../platform/lists.ts';
import { Small, type Shelf } from '../platform/persisted.svelte.ts';

const runShape = v.object({
  address: v.string(),
  /** The subjects of a review; null for a set by its number. */
  subjects: v.nullable(v.array(v.string())),
  answers: v.array(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(3))),
});
export type Run = v.InferOutput<typeof runShape>;

const shape = v.object({
  subjects: v.fallback(v.record(v.string(), v.unknown()), {}),
  run: v.fallback(v.nullable(runShape), null),
});

type Answers = v.InferOutput<typeof shape> & { subjects: Readonly<Record<string, Subject>> };
type AnswersDid = 'forgotten' | 'from-bin' | 'brought-back';

function read(raw: unknown): Answers | undefined {
  const parsed = v.safeParse(shape, raw);
  if (!parsed.success) return undefined;
  const { subjects, run } = parsed.output;
  const understood = Object.entries(subjects).flatMap(([subject, kept]) => {
    const one = v.safeParse(subjectShape, kept);
    return one.success ? [[subject, one.output] as const] : [];
  });
  return { subjects: Object.fromEntries(understood), run };
}

export class QuizProgress {
  readonly kept: Small<Answers, AnswersDid>;

  constructor(shelf: Shelf | undefined) {
    this.kept = new Small<Answers, AnswersDid>(shelf, {
      key: QUESTIONS,
      blank: { subjects: {}, run: null },
      read,
      // what was answered since stays: a step goes only over what it found
      stepped: (now, from, to) => ({
        subjects: partsStepped(now.subjects, from.subjects, to.subjects),
        run: JSON.stringify(now.run) === JSON.stringify(from.run) ? to.run : now.run,
      }),
    });
  }

  get subjects(): Readonly<Record<string, Subject>> {
    return this.kept.now.subjects;
  }

  /** The self-test that is under way. */
  get run(): Run | null {
    return this.kept.now.run;
  }

  /** Takes an answer into account: a wrong one comes back soon, a right one later and later. */
  answered(subject: string, isRight: boolean, now: Date): void {
    const next = reviewed(this.subjects[subject], isRight, now);
    this.kept.set({ ...this.kept.now, subjects: { ...this.subjects, [subject]: next } });
  }

  /** Subjects to be reviewed by the end of a day, the longest due first. */
  dueOn(now: Date): string[] {
    const end = endOfDay(now);
    return Object.entries(this.subjects)
      .filter(([, { card }]) => Date.parse(card.due) < end)
      .sort(([, a], [, b]) => Date.parse(a.card.due) - Date.parse(b.card.due))
      .map(([subject]) => subject);
  }

  get totals(): { subjects: number; right: number; asked: number } {
    const all = Object.values(this.subjects);
    return {
      subjects: all.length,
      right: all.reduce((sum, one) => sum + one.right, 0),
      asked: all.reduce((sum, one) => sum + one.asked, 0),
    };
  }

  setRun(run: Run | null): void {
    this.kept.set({ ...this.kept.now, run });
  }

  /** Brings back answers that were forgotten; what was answered since stays. */
  bringBack(text: string): void {
    const back = this.kept.understood(text);
    const then = back === undefined ? undefined : read(JSON.parse(back));
    if (!then) return;
    const subjects = { ...then.subjects, ...this.subjects };
    this.kept.become({ subjects, run: this.run ?? then.run }, 'from-bin');
  }

  /** Forgets every answer, and the self-test that is under way; undo brings both back. */
  forget(): void {
    this.kept.become({ subjects: {}, run: null }, 'forgotten');
  }
}
