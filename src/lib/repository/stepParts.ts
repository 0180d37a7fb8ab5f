/** Steps that are taken out of a talk and lie in the bin by themselves; fetched with the files of talks. */
import * as v from 'valibot';
import type { Talk, TalkStep } from '../lecture/talk.ts';
import { parseTalkText, talkText } from '../lecture/talkFile.ts';
import type { Part } from './partRows.ts';
import { understood, without } from './parts.ts';

const stepPart = v.object({ at: v.pipe(v.number(), v.integer(), v.minValue(0)), talk: v.string() });

/** Which steps are one step in other words. A step has no id: one action at a time tells it. */
export class Rewordings {
  readonly #lines = new WeakMap<TalkStep, { last: TalkStep }>();

  /** An action made one talk of another: a new step in the place of one that went is that one. */
  follow(before: Talk, after: Talk): void {
    const fresh = without(after.steps, before.steps);
    for (const step of without(before.steps, after.steps)) {
      const line = this.#lines.get(step) ?? { last: step };
      const next = after.steps[before.steps.indexOf(step)];
      line.last = next && fresh.includes(next) ? next : step;
      for (const one of [step, line.last]) this.#lines.set(one, line);
    }
  }

  isIn({ steps }: Talk, step: TalkStep): boolean {
    const line = this.#lines.get(step);
    return line !== undefined && steps.some((one) => this.#lines.get(one) === line);
  }

  /** A step as it was worded last. */
  lastOf(step: TalkStep): TalkStep {
    return this.#lines.get(step)?.last ?? step;
  }
}

/** Steps that a change takes out of a talk, each as a talk of that step alone. */
export function goneFromTalk(before: Talk, after: Talk, rewordings: Rewordings): Part[] {
  const gone = without(before.steps, after.steps).filter((one) => !rewordings.isIn(after, one));
  return gone.map((one): Part => {
    const at = before.steps.indexOf(one);
    const step = rewordings.lastOf(one);
    const talk = talkText({ title: before.title, about: '', steps: [step] });
    return { kind: 'steps', key: JSON.stringify(step), text: JSON.stringify({ at, talk }) };
  });
}

/** A step out of the bin, and where it stood, counted from 0. */
export function readStepPart(
  text: string,
): { at: number; step: Talk['steps'][number]; title: string } | undefined {
  const part = understood(stepPart, text);
  const parsed = part && parseTalkText(part.talk);
  const step = parsed?.ok ? parsed.talk.steps[0] : undefined;
  if (!part || !parsed?.ok || !step) return undefined;
  return { at: part.at, step, title: parsed.talk.title };
}

export const withStepBack = (
  talk: Talk,
  { at, step }: { at: number; step: Talk['steps'][number] },
): Talk => ({
  ...talk,
  steps: talk.steps.toSpliced(Math.min(at, talk.steps.length), 0, step),
});
