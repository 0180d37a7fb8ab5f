/** Which visit the head of a page speaks of: the one that is on the screen, with its date, age and examiner. */
import { parseCivil, type CivilDate } from '../age/civil.ts';
import type { Ages } from '../age/clocks.ts';
import type { RawVisit } from '../case/shape.ts';
import type { JudgedVisit } from '../judge/judge.ts';

export interface VisitOnScreen {
  /** Undefined for a visit that is not in the record yet. */
  id: string | undefined;
  on: CivilDate | undefined;
  examiner: string;
  /** Undefined where the date is none, or lies before the birth. */
  ages: Ages | undefined;
}

interface Around {
  /** The visit that is named by the address or chosen; undefined where there is none. */
  id: string | undefined;
  isNew: boolean;
  visits: readonly Pick<JudgedVisit, 'visit' | 'ages'>[];
  born: CivilDate;
  today: CivilDate;
  agesOn: (on: CivilDate) => Ages | undefined;
}

/** @param typed the visit as it was last typed, where the page is that of a visit */
export function visitOnScreen(
  typed: RawVisit | undefined,
  { id, isNew, visits, born, today, agesOn }: Around,
): VisitOnScreen | undefined {
  if (typed || isNew) {
    const on = typed ? parseCivil(typed.on) : today;
    return {
      id: isNew ? undefined : id,
      on,
      examiner: typed?.examiner ?? '',
      ages: on && on >= born ? agesOn(on) : undefined,
    };
  }
  const found = visits.find(({ visit }) => visit.id === id);
  return found && { id, on: found.visit.on, examiner: found.visit.examiner, ages: found.ages };
}
