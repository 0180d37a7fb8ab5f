/**
 * The course of one reflex through all visits. When it appeared or went is never a point: it lies
 * between two visits, or before the first, or after the last.
 */
import type { Ages } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import type { Side } from '../atlas/types.ts';
import type { Visit } from './case.ts';
import { isAnswer, isElicited } from './finding.ts';

/** A visit's date and the place of the child's age then on the axis. */
export interface Seen {
  on: CivilDate;
  axisDay: number;
}

/** After one visit and by another; null = before the first visit, or not by the last. */
export interface Interval {
  after: Seen | null;
  by: Seen | null;
}

/** `no-answer`: looked for, but never in a way that answers; `never-seen`: answered, and not there. */
export type CourseState = 'no-answer' | 'never-seen' | 'present' | 'gone' | 'returned';

export interface Course {
  reflex: string;
  side: Side;
  state: CourseState;
  /** When it appeared: after the last visit without, by the first visit with. */
  appeared: Interval;
  /** When it integrated: after the last visit with, by the first without. Only after it was seen. */
  integrated: Interval | null;
  /** Visits at which it gave an answer. */
  answers: number;
}

/** One answer on a date: present when any finding then elicited it. */
export interface Answer extends Seen {
  present: boolean;
}

/** The course that a list of answers, oldest first, shows. */
export function courseOf(answers: readonly Answer[]): Omit<Course, 'reflex' | 'side'> {
  const first = answers.findIndex((answer) => answer.present);
  const seenAt = (index: number): Seen | null => {
    const answer = answers[index];
    return answer ? { on: answer.on, axisDay: answer.axisDay } : null;
  };
  const last = answers.length - 1;
  if (first < 0)
    return {
      state: answers.length === 0 ? 'no-answer' : 'never-seen',
      appeared: { after: seenAt(last), by: null },
      integrated: null,
      answers: answers.length,
    };
  const lastPresent = answers.findLastIndex((answer) => answer.present);
  const gap = answers.slice(first, lastPresent).some((answer) => !answer.present);
  const present = lastPresent === last;
  return {
    state: present ? (gap ? 'returned' : 'present') : 'gone',
    appeared: { after: seenAt(first - 1), by: seenAt(first) },
    integrated: { after: seenAt(lastPresent), by: present ? null : seenAt(lastPresent + 1) },
    answers: answers.length,
  };
}

/** The answers a predicate picks, merged by date, with the child's age on the axis. */
export function answersOf(
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
  picks: (reflex: string, side: Side) => boolean,
): Answer[] {
  const byDate = new Map<CivilDate, boolean>();
  for (const visit of visits)
    for (const finding of visit.findings)
      if (picks(finding.reflex, finding.side) && isAnswer(finding))
        byDate.set(visit.on, (byDate.get(visit.on) ?? false) || isElicited(finding.response));
  return [...byDate]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([on, present]) => ({ on, present, axisDay: agesOn(on).axisDay }));
}

/** The course of every reflex and side that was ever looked at. */
export function coursesOf(visits: readonly Visit[], agesOn: (on: CivilDate) => Ages): Course[] {
  const seen = new Map<string, { reflex: string; side: Side }>();
  for (const visit of visits)
    for (const { reflex, side } of visit.findings) seen.set(`${reflex} ${side}`, { reflex, side });
  return [...seen.values()].map(({ reflex, side }) => ({
    reflex,
    side,
    ...courseOf(answersOf(visits, agesOn, (r, s) => r === reflex && s === side)),
  }));
}

/** The interval in which a milestone was reached. */
export function milestoneReached(
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
  milestone: string,
): Interval {
  const byDate = new Map<CivilDate, boolean>();
  for (const visit of visits)
    for (const seen of visit.milestones)
      if (seen.milestone === milestone)
        byDate.set(visit.on, (byDate.get(visit.on) ?? false) || seen.seen);
  const answers = [...byDate]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([on, present]) => ({ on, present, axisDay: agesOn(on).axisDay }));
  return courseOf(answers).appeared;
}
