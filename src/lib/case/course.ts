/**
 * The course of one reflex through all visits. When it appeared or went is never a point: it lies
 * between two visits, or before the first, or after the last.
 */
import type { Ages } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import type { Side } from '../atlas/types.ts';
import type { Visit } from './case.ts';
import { isAnswer, isElicited, testOf, type Finding } from './finding.ts';

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
  /** Of which variant of the response; absent where the findings do not say. */
  variant?: string;
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
export function courseOf(answers: readonly Answer[]): Omit<Course, 'reflex' | 'variant' | 'side'> {
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

/** By date, whether any finding then elicited it. */
type Present = Map<CivilDate, boolean>;

function note(byDate: Present, on: CivilDate, finding: Finding): void {
  if (isAnswer(finding)) byDate.set(on, (byDate.get(on) ?? false) || isElicited(finding.response));
}

const inOrder = (byDate: Present, axisDayOn: (on: CivilDate) => number): Answer[] =>
  [...byDate]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([on, present]) => ({ on, present, axisDay: axisDayOn(on) }));

/** The answers a predicate picks, merged by date, with the child's age on the axis. */
export function answersOf(
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
  picks: (finding: Finding) => boolean,
): Answer[] {
  const byDate: Present = new Map();
  for (const { on, findings } of visits)
    for (const finding of findings) if (picks(finding)) note(byDate, on, finding);
  return inOrder(byDate, (on) => agesOn(on).axisDay);
}

/** The course of every reflex, variant and side that was ever looked at. */
export function coursesOf(visits: readonly Visit[], agesOn: (on: CivilDate) => Ages): Course[] {
  // gone through once: a record of thousands of findings would be gone through for each of its reflexes
  const seen = new Map<
    string,
    { of: Pick<Course, 'reflex' | 'variant' | 'side'>; byDate: Present }
  >();
  const axisDays = new Map<CivilDate, number>();
  for (const { on, findings } of visits) {
    if (!axisDays.has(on)) axisDays.set(on, agesOn(on).axisDay);
    for (const finding of findings) {
      const { reflex, variant, side } = finding;
      const key = `${testOf(finding)} ${side}`;
      let course = seen.get(key);
      if (!course) {
        const of = { reflex, ...(variant === undefined ? {} : { variant }), side };
        seen.set(key, (course = { of, byDate: new Map() }));
      }
      note(course.byDate, on, finding);
    }
  }
  return [...seen.values()].map(({ of, byDate }) => ({
    ...of,
    ...courseOf(inOrder(byDate, (on) => axisDays.get(on) ?? agesOn(on).axisDay)),
  }));
}

/**
 * By which test each reflex was looked at last, where something is said of the reflex as a whole: of two on a day
 * the later in the record. A test that was followed by another is past.
 */
export function lastTests(visits: readonly Visit[]): Map<string, string> {
  const last = new Map<string, string>();
  for (const { findings } of visits.toSorted((a, b) => (a.on < b.on ? -1 : Number(a.on > b.on))))
    for (const finding of findings) last.set(finding.reflex, testOf(finding));
  return last;
}

/** The interval in which a milestone was reached. */
export function milestoneReached(
  visits: readonly Visit[],
  agesOn: (on: CivilDate) => Ages,
  milestone: string,
): Interval {
  const byDate: Present = new Map();
  for (const visit of visits)
    for (const seen of visit.milestones)
      if (seen.milestone === milestone)
        byDate.set(visit.on, (byDate.get(visit.on) ?? false) || seen.seen);
  return courseOf(inOrder(byDate, (on) => agesOn(on).axisDay)).appeared;
}
