/**
 * About how old a child is on a day ahead, and what lies behind by then. The sentences and the picture
 * both take their figures from here, so that they never tell of one thing in two ways.
 */
import { DAYS_PER_MONTH, DAYS_PER_WEEK, TERM_DAYS, type AxisDay } from '../age/axis.ts';
import { agesOn, dateAtAxisDay, DEFAULT_LIMITS } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import type { Reflex } from '../atlas/types.ts';
import type { AboutAge } from '../words/family.ts';
import type { PageInput } from './model.ts';
import type { Speaker } from './speaker.ts';

/** Whole weeks below this, whole months from it on. */
const WEEKS_BELOW_DAYS = 8 * DAYS_PER_WEEK;

const limitsOf = ({ options }: PageInput) => options.limits ?? DEFAULT_LIMITS;

/** What an infant feeds by: to a family, that it fades is a child that feeds no more. */
const FED_BY: ReadonlySet<string> = new Set(['rooting', 'sucking', 'swallowing']);

export const isFedBy = ({ id }: Reflex): boolean => FED_BY.has(id);

export const isBornEarly = (input: PageInput): boolean =>
  input.record.child.birth.gestationalDays < limitsOf(input).pretermBelowDays;

export const dateOf = (input: PageInput, day: AxisDay): CivilDate =>
  dateAtAxisDay(input.record.child.birth, day, limitsOf(input));

/** The age that counts on a date. Of a child born early it says from when it is counted. */
function aboutAge(input: PageInput, on: CivilDate): AboutAge {
  const { axisDay, counts } = agesOn(input.record.child.birth, on, limitsOf(input));
  const days = axisDay - TERM_DAYS;
  const isWeeks = days < WEEKS_BELOW_DAYS;
  return {
    unit: isWeeks ? 'weeks' : 'months',
    count: Math.round(days / (isWeeks ? DAYS_PER_WEEK : DAYS_PER_MONTH)),
    clock: !isBornEarly(input) ? 'age' : counts === 'corrected' ? 'due' : 'birth',
  };
}

/** About how old the child is on a date, or from one date to another, within a sentence. */
export const whenOn = (
  say: Speaker,
  input: PageInput,
  to: CivilDate,
  from: CivilDate = to,
): string => say.words.when(aboutAge(input, from), aboutAge(input, to));

/** Whether there has been a visit since the one that is told of. */
export const isPast = ({ visits, shown }: PageInput): boolean =>
  shown !== null && visits.some(({ visit }) => visit.on > shown.visit.on);

/** What lies no later than this is over: the last visit, and today. An invented child grows no older. */
export function overBy({ record, visits, today }: PageInput, on: CivilDate): CivilDate {
  const days = [on, ...visits.map(({ visit }) => visit.on)];
  if (today && !record.child.invented) days.push(today);
  return days.reduce((last, day) => (day > last ? day : last));
}
