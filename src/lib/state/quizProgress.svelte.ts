/** What was answered, kept on this machine, and what of it is to be reviewed when. */
import * as v from 'valibot';
import { endOfDay, reviewed, subjectShape, type Subject } from './quizCards.ts';
import type { Shelf } from './settings.svelte.ts';

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

const KEY = 'tidemark-questions';

export class QuizProgress {
  subjects = $state.raw<Readonly<Record<string, Subject>>>({});
  /** The self-test that is under way. */
  run = $state.raw<Run | null>(null);
  readonly #shelf: Shelf | undefined;

  constructor(shelf: Shelf | undefined) {
    this.#shelf = shelf;
    const parsed = v.safeParse(shape, this.#read());
    if (!parsed.success) return;
    this.run = parsed.output.run;
    this.subjects = Object.fromEntries(
      Object.entries(parsed.output.subjects).flatMap(([subject, kept]) => {
        const one = v.safeParse(subjectShape, kept);
        return one.success ? [[subject, one.output]] : [];
      }),
    );
  }

  /** Takes an answer into account: a wrong one comes back soon, a right one later and later. */
  answered(subject: string, isRight: boolean, now: Date): void {
    this.subjects = {
      ...this.subjects,
      [subject]: reviewed(this.subjects[subject], isRight, now),
    };
    this.#keep();
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
    this.run = run;
    this.#keep();
  }

  forget(): void {
    this.subjects = {};
    this.setRun(null);
  }

  #read(): unknown {
    try {
      return JSON.parse(this.#shelf?.getItem(KEY) ?? '{}');
    } catch {
      return {};
    }
  }

  #keep(): void {
    const { subjects, run } = this;
    try {
      this.#shelf?.setItem(KEY, JSON.stringify({ subjects, run }));
    } catch {
      // a full or denied storage only means that the answers are forgotten with the page
    }
  }
}
