/** Steps that are taken out of a talk and lie in the bin by themselves; fetched with the files of talks. */
import * as v from 'valibot';
import type { Talk } from '../lecture/talk.ts';
import { parseTalkText, talkText } from '../lecture/talkFile.ts';
import type { Part } from './partRows.ts';
import { understood, without } from './parts.ts';

const stepPart = v.object({ at: v.pipe(v.number(), v.integer(), v.minValue(0)), talk: v.string() });

/** Steps that a change takes out of a talk, each as a talk of that step alone. */
export function goneFromTalk(before: Talk, after: Talk): Part[] {
  if (after.steps.length >= before.steps.length) return [];
  return without(before.steps, after.steps).map((step): Part => {
    const at = before.steps.indexOf(step);
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
