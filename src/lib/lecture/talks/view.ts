/** What the steps of ready-made talks are written with. */
import { fromGestationWeeks, fromMonths, type AxisDay } from '../../age/axis.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { TalkText } from '../../words/en/talkTexts/facts.ts';
import { factsOf } from '../talkFacts.ts';
import type { StepView, Talk } from '../talk.ts';

export const weeks = fromGestationWeeks;
export const months = fromMonths;

export const between = (from: AxisDay, to: AxisDay) => ({ from, to });

/** From 22 weeks of gestation to a number of months after term. */
export const upTo = (last: number) => between(weeks(22), months(last));

/** A step with what most steps have. */
export const view = (
  lanes: readonly string[],
  age: AxisDay,
  rest: Partial<Omit<StepView, 'lanes' | 'age'>> = {},
): StepView => ({
  lanes,
  age,
  range: upTo(12),
  sources: 'all',
  opened: [],
  orders: [],
  ...rest,
});

/** A talk from its views and its words. Either without the other is a fault of ours. */
export function talkOf(views: readonly StepView[], text: TalkText, atlas: Atlas): Talk {
  if (views.length !== text.steps.length)
    throw new Error(`${text.title}: ${views.length} views, ${text.steps.length} texts`);
  const facts = factsOf(atlas);
  return {
    title: text.title,
    about: text.about,
    steps: views.map((step, index) => ({ ...step, ...text.steps[index]!(facts) })),
  };
}
