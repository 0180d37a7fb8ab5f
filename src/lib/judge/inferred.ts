/** What is inferred of one reflex in one child at a date, as far as the chosen sources date it. */
import type { CivilDate } from '../age/civil.ts';
import type { Side } from '../atlas/types.ts';
import { reflexOf } from '../case/finding.ts';
import type { ChildReading } from './reading/child.ts';
import type { Dates, EventKind, States } from './reading/course.ts';

/** What is awaited, with the dates by which half and nine in ten would have changed; null: no such date. */
export interface Awaited {
  event: EventKind;
  /** P(it never changes), 0 to 1. */
  never: number;
  halfBy: CivilDate | null;
  nineInTenBy: CivilDate | null;
}

export interface InferredCourse {
  reflex: string;
  /** Of which variant of the response; absent where the findings do not say. */
  variant?: string;
  /** One side; null for the reflex as a whole. */
  side: Side | null;
  /** On how many days it was looked at with an answer. */
  days: number;
  on: CivilDate;
  /** P(not yet, there, gone) on that date, which sum to 1; null where a source dates only one of the events. */
  probabilities: States | null;
  /** Null where no chosen source dates the event. */
  appears: Dates | null;
  integrates: Dates | null;
  /** Null once it is gone, and where a source dates only one of the events. */
  awaited: Awaited | null;
}

/** Of a reflex or one of its variants (`testOf`); undefined for one that is not in the atlas. */
export function inferredOf(
  reading: ChildReading,
  test: string,
  on: CivilDate,
  side?: Side,
): InferredCourse | undefined {
  const course = reading.course(test, side);
  if (!course) return undefined;
  const { datedA, datedI } = course.prior;
  const looked = reading.days.get(test);
  const { clock } = reading;
  const now = clock.dayOn(on);
  const change = datedA && datedI && !course.contradicted ? course.change(now) : undefined;
  const dateOf = (day: number | null): CivilDate | null =>
    day === null ? null : clock.dateOf(day);
  return {
    reflex: reflexOf(test),
    ...(looked?.variant === undefined ? {} : { variant: looked.variant }),
    side: side ?? null,
    days: ((side ? looked?.sides[side] : looked?.whole) ?? []).length,
    on,
    probabilities: datedA && datedI && !course.contradicted ? course.states(now) : null,
    appears: datedA ? course.dates('appears') : null,
    integrates: datedI ? course.dates('integrates') : null,
    awaited: change
      ? {
          event: change.event,
          never: change.never,
          halfBy: dateOf(change.halfBy),
          nineInTenBy: dateOf(change.nineInTenBy),
        }
      : null,
  };
}
