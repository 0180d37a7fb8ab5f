/** What is asked of a visit's date before it is kept, and what is said of it. */
import { parseCivil, type CivilDate } from '../age/civil.ts';
import type { Case } from '../case/case.ts';
import type { RawVisit } from '../case/shape.ts';

/** Another visit on the same date. */
export interface SameDay {
  number: number;
  examiner: string;
  /** Whether the examiner is the same too, so that the two cannot be told apart. */
  isTwin: boolean;
}

export interface DateAsks {
  /** The date lies before birth: one of the two is wrong. */
  beforeBirth: CivilDate | undefined;
  /** The date lies ahead of today and was not yet there: asked before it is taken. */
  ahead: CivilDate | undefined;
  sameDay: SameDay | undefined;
}

/** @param number the visit's own, counted from 1; undefined for a new one */
export function dateAsks(
  record: Case,
  number: number | undefined,
  visit: RawVisit,
  today: CivilDate,
): DateAsks {
  const on = parseCivil(visit.on);
  const examiner = visit.examiner.trim();
  const others = record.visits.flatMap((other, index) =>
    index + 1 !== number && other.on === on
      ? [{ number: index + 1, examiner: other.examiner, isTwin: other.examiner === examiner }]
      : [],
  );
  const stood = number === undefined ? undefined : record.visits[number - 1]?.on;
  return {
    beforeBirth: on && on < record.child.birth.born ? on : undefined,
    ahead: on && on > today && on !== stood ? on : undefined,
    sameDay: others.find(({ isTwin }) => isTwin) ?? others[0],
  };
}

/** The date of the visit that follows, when a visit was entered out of order; undefined when it is last. */
export const followedBy = (record: Case, number: number): CivilDate | undefined =>
  record.visits[number]?.on;
