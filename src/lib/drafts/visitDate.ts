/** What is asked of a visit's date before it is kept, and what is said of it. */
import { parseCivil, type CivilDate } from '../age/civil.ts';
import type { Case } from '../case/case.ts';
import type { RawVisit } from '../case/shape.ts';

/** Another visit on the same date. */
export interface SameDay {
  id: string;
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

export function dateAsks(record: Case, visit: RawVisit, today: CivilDate): DateAsks {
  const on = parseCivil(visit.on);
  const examiner = visit.examiner.trim();
  const others = record.visits.flatMap((other) =>
    other.id !== visit.id && other.on === on
      ? [{ id: other.id, examiner: other.examiner, isTwin: other.examiner === examiner }]
      : [],
  );
  const stood = record.visits.find(({ id }) => id === visit.id)?.on;
  return {
    beforeBirth: on && on < record.child.birth.born ? on : undefined,
    ahead: on && on > today && on !== stood ? on : undefined,
    sameDay: others.find(({ isTwin }) => isTwin) ?? others[0],
  };
}

/** The date of the visit that follows a visit; undefined when it is the last, or not there. */
export function followedBy({ visits }: Case, id: string): CivilDate | undefined {
  const at = visits.findIndex((visit) => visit.id === id);
  return at < 0 ? undefined : visits[at + 1]?.on;
}
