/** English for the date of the next visit, and why it is that date. */
import type { CivilDate } from '../../age/civil.ts';
import type { Asking, NextVisit, NextWhy } from '../../judge/nextVisit.ts';
import type { OpenQuestion } from '../../judge/plan.ts';
import { dateWords } from './ages.ts';
import { listed } from './body.ts';
import { todaySentence } from './judge.ts';

/** How long each may wait at most; days but for the usual time. */
export interface Waits {
  discuss: number;
  'seen-before': number;
  watch: number;
  usualMonths: number;
}

/** The names of what is flagged. */
export type Names = Readonly<Record<'reflex' | 'milestone' | 'sequence', (id: string) => string>>;

const weeks = (days: number): string => `${days / 7} weeks`;

function askingWords({ reflexes, milestones, sequences }: Asking, names: Names): string {
  return listed([
    ...reflexes.map(names.reflex),
    ...milestones.map((id) => names.milestone(id).toLowerCase()),
    ...sequences.map((id) => `the sequence “${names.sequence(id)}”`),
  ]);
}

const does = ({ awaits }: OpenQuestion): string =>
  awaits === 'to-appear' ? 'present' : 'integrated';

/** `Next visit by 25 May 2026`; what should not wait has no date to plan for. */
export const nextTitle = ({ by, why }: NextVisit): string =>
  why.code === 'today'
    ? 'To be seen by a doctor on the day of the visit'
    : why.code === 'prepared'
      ? `Next visit on ${dateWords(by)}`
      : `Next visit by ${dateWords(by)}`;

/** Why it is that date. @param last the last visit; null before the first */
export function whySentences(
  why: NextWhy,
  last: CivilDate | null,
  names: Names,
  waits: Waits,
): string[] {
  const since = last ? ` of the visit on ${dateWords(last)}` : '';
  switch (why.code) {
    case 'first':
      return ['Not seen yet.'];
    case 'today':
      return why.today.map(todaySentence);
    case 'discuss':
      return [
        `To be discussed with the team: ${askingWords(why, names)}. To be seen again within ${weeks(waits.discuss)}${since}.`,
      ];
    case 'seen-before':
      return [
        `Present before and not elicited now: ${askingWords(why, names)}. To be tried again within ${weeks(waits['seen-before'])}${since}.`,
      ];
    case 'watch':
      return [`To be rechecked: ${askingWords(why, names)}. Within ${weeks(waits.watch)}${since}.`];
    case 'prepared':
      return ['A visit is prepared for this date.'];
    case 'awaited':
      return why.of === 1
        ? [
            `By then ${names.reflex(why.question.reflex)} would be ${does(why.question)} in at least half of the children with this past. Nothing calls for an earlier date.`,
          ]
        : [
            `By then at least half of the ${why.of} expected changes would have happened in children with this past. Nothing calls for an earlier date.`,
          ];
    case 'usual':
      return [
        `Nothing calls for an earlier date: ${waits.usualMonths} months after the last visit, the usual time.`,
      ];
  }
}

/** How the date comes about, said once. */
export const rule = ({ discuss, 'seen-before': before, watch, usualMonths }: Waits): string =>
  `The next visit is due by the earliest of these dates. After the last visit: ${weeks(discuss)} where something is to be discussed, ${weeks(before)} where a response was present before and not elicited now, ${weeks(watch)} where something is to be rechecked. The date of a visit that was prepared. Where nothing is flagged, the date by which half of the expected changes would have happened, though not before ${weeks(watch)}; ${usualMonths} months at most, up to 24 months of age. Anything that should not wait is seen by a doctor on the day of the visit. These times are our choice; your local pathway comes first.`;

const BESIDE: Readonly<Record<Exclude<NextWhy['code'], 'awaited' | 'today' | 'usual'>, string>> = {
  first: 'first visit',
  discuss: 'to be discussed',
  'seen-before': 'present before, not elicited now',
  watch: 'recheck',
  prepared: 'prepared visit',
};

/** The next visit and why in a line: `visit due since 5 June 2026: Moro integrated?`. */
export function lineWords(
  next: NextVisit | undefined,
  on: CivilDate,
  name: (reflex: string) => string,
): string {
  if (!next) return 'no next visit dated';
  const { by, why } = next;
  if (why.code === 'today')
    return by === on ? 'see a doctor today' : `to see a doctor on ${dateWords(by)}, at once`;
  const beside =
    why.code === 'awaited'
      ? `${name(why.question.reflex)} ${does(why.question)}?`
      : why.code === 'usual'
        ? by < on
          ? 'follow-up overdue'
          : 'usual follow-up'
        : BESIDE[why.code];
  const due = by === on ? 'due today' : by < on ? `due since ${dateWords(by)}` : dateWords(by);
  return `${by <= on ? 'visit' : 'next visit'} ${due}: ${beside}`;
}

export const page = {
  planFor: 'Plan for this date',
  how: 'How the date is chosen',
};
