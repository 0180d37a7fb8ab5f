/** By when a child is to be seen again, and why: what asks for attention pulls the date forward. */
import { fromMonths } from '../age/axis.ts';
import { addDays, addMonths, type CivilDate } from '../age/civil.ts';
import { dateAtAxisDay, DEFAULT_LIMITS } from '../age/clocks.ts';
import { isAnswer, keepLatest, testOf } from '../case/finding.ts';
import { daysOf, findingsOf, milestonesOf } from './day.ts';
import { worstFirst, type CaseJudge, type JudgedVisit, type JudgeOptions } from './judge.ts';
import { openQuestions, type OpenQuestion } from './questions.ts';
import type { Today } from './reading/asks.ts';
import type { ChildReading } from './reading/child.ts';
import {
  DISCUSSED_AGAIN_DAYS,
  FOLLOWED_UNTIL_MONTHS,
  SEEN_AGAIN_DAYS,
  USUAL_MONTHS,
  WATCHED_AGAIN_DAYS,
} from './reading/constants.ts';
import { asksMore, type Attention } from './rules/rule.ts';

/** What pulls the date forward: ids of reflexes, milestones and sequences, each once. */
export interface Asking {
  reflexes: readonly string[];
  milestones: readonly string[];
  sequences: readonly string[];
}

export type NextWhy =
  /** Not seen yet. */
  | { code: 'first' }
  /** It should not wait: a doctor sees the child on the day of the visit. */
  | { code: 'today'; today: readonly Today[] }
  | ({ code: 'discuss' | 'seen-before' | 'watch' } & Asking)
  /** A visit was prepared for the date. */
  | { code: 'prepared' }
  /** By the date half of the awaited changes would have happened; the one that dates it. */
  | { code: 'awaited'; question: OpenQuestion; of: number }
  | { code: 'usual' };

export interface NextVisit {
  /** The latest date. */
  by: CivilDate;
  why: NextWhy;
}

/** How long each may wait, in days, from what asks for most on. */
export const AGAIN_DAYS = {
  discuss: DISCUSSED_AGAIN_DAYS,
  'seen-before': SEEN_AGAIN_DAYS,
  watch: WATCHED_AGAIN_DAYS,
} as const;

type Wait = keyof typeof AGAIN_DAYS;

/** What an attention makes wait; undefined where it asks for nothing. */
function waitOf(attention: Attention, seenBefore: boolean): Wait | undefined {
  if (asksMore(attention, 'watch')) return 'discuss';
  if (seenBefore) return 'seen-before';
  return attention === 'watch' ? 'watch' : undefined;
}

interface Asks {
  wait: Wait;
  kind: keyof Asking;
  id: string;
}

/** What the latest answer on each reflex, variant and side, and on each milestone, asks for. */
function latestAsks(visits: readonly JudgedVisit[]): Asks[] {
  const latest = new Map<string, Asks | undefined>();
  for (const day of daysOf(visits)) {
    for (const { finding, attention, raised } of worstFirst(findingsOf(day)).reverse())
      if (isAnswer(finding) || raised.length > 0) {
        const { reflex: id } = finding;
        const wait = waitOf(
          attention,
          raised.some(({ flag }) => flag === 'seen-before'),
        );
        keepLatest(latest, finding, wait && { wait, kind: 'reflexes', id });
      }
    for (const { milestone, attention, why } of milestonesOf(day)) {
      const wait = waitOf(attention, why === 'seen-before');
      latest.set(milestone.id, wait && { wait, kind: 'milestones', id: milestone.id });
    }
  }
  return [...latest.values()].filter((one) => one !== undefined);
}

function asking(asks: readonly Asks[], wait: Wait): Asking {
  const of = (kind: keyof Asking): string[] => [
    ...new Set(asks.filter((one) => one.wait === wait && one.kind === kind).map(({ id }) => id)),
  ];
  return { reflexes: of('reflexes'), milestones: of('milestones'), sequences: of('sequences') };
}

/**
 * By when a change would have happened in half of the children with this past, or, where a source dates
 * only one of the two events, from when most sources expect it.
 */
function halfBy({ awaits, most, ...of }: OpenQuestion, on: CivilDate, reading: ChildReading) {
  const course = reading.course(testOf(of));
  if (!course?.prior.datedA || !course.prior.datedI) return most;
  const change = course.change(reading.clock.dayOn(on));
  if (change?.event !== (awaits === 'to-appear' ? 'appears' : 'integrates')) return most;
  return change.halfBy === null ? most : reading.clock.dateOf(change.halfBy);
}

/** The date by which half of the awaited changes would have happened, each test (`testOf`) counted once. */
function awaited(
  questions: readonly OpenQuestion[],
  last: CivilDate,
  reading: ChildReading,
): NextVisit | undefined {
  const byTest = new Map(questions.toReversed().map((one) => [testOf(one), one]));
  const dated = [...byTest.values()]
    .flatMap((question) => {
      const by = halfBy(question, last, reading);
      return by && by > last ? [{ by, question }] : [];
    })
    .sort((a, b) => (a.by < b.by ? -1 : Number(a.by > b.by)));
  const half = dated[Math.ceil(dated.length / 2) - 1];
  if (!half) return undefined;
  // what is only awaited brings a child back no sooner than what is to be rechecked
  const soonest = addDays(last, WATCHED_AGAIN_DAYS);
  return {
    by: half.by < soonest ? soonest : half.by,
    why: { code: 'awaited', question: half.question, of: dated.length },
  };
}

/** When time alone makes a visit fall due; undefined past the age up to which children are followed. */
function usual({ record }: CaseJudge, last: CivilDate, options: JudgeOptions) {
  const until = fromMonths(FOLLOWED_UNTIL_MONTHS);
  const end = dateAtAxisDay(record.child.birth, until, options.limits ?? DEFAULT_LIMITS);
  const by = addMonths(last, USUAL_MONTHS);
  return by <= end ? [{ by, why: { code: 'usual' as const } }] : [];
}

/**
 * By when a child is to be seen again: the earliest date that anything gives, counted from the last visit.
 * What should not wait is the date of that visit itself, whatever else is planned. Of one date the reason
 * named first here counts: to be discussed, seen before and not now, to be rechecked (the latest answer of
 * each reflex and side, of each milestone, and every sequence), a prepared visit, what is awaited, the
 * usual time. Undefined where nothing dates a visit, past the age up to which children are followed.
 * @param visits the record's, if they were judged already @param questions open after the last visit
 */
export function nextVisit(
  judge: CaseJudge,
  options: JudgeOptions,
  visits: readonly JudgedVisit[] = judge.record.visits.map((visit) => judge.visit(visit)),
  questions?: readonly OpenQuestion[],
): NextVisit | undefined {
  const { record, reading } = judge;
  const last = record.visits.at(-1)?.on;
  if (!last) return { by: record.child.birth.born, why: { code: 'first' } };
  const today = visits.filter(({ visit }) => visit.on === last).flatMap((one) => one.today);
  if (today.length > 0) return { by: last, why: { code: 'today', today } };
  const asks = latestAsks(visits);
  if (!asks.some(({ wait }) => wait === 'discuss'))
    for (const { sequence, asks: asked } of judge.sequences) {
      const wait = waitOf(asked, false);
      if (wait) asks.push({ wait, kind: 'sequences', id: sequence.id });
    }
  const found: NextVisit[] = (['discuss', 'seen-before', 'watch'] as const).flatMap((wait) =>
    asks.some((one) => one.wait === wait)
      ? [{ by: addDays(last, AGAIN_DAYS[wait]), why: { code: wait, ...asking(asks, wait) } }]
      : [],
  );
  const { sheet } = record;
  if (sheet && sheet.on > last) found.push({ by: sheet.on, why: { code: 'prepared' } });
  if (asks.length === 0) {
    const open = questions ?? openQuestions(record, last, options, judge);
    const half = awaited(open, last, reading);
    if (half) found.push(half);
  }
  found.push(...usual(judge, last, options));
  return found.reduce<NextVisit | undefined>(
    (first, one) => (first && first.by <= one.by ? first : one),
    undefined,
  );
}
