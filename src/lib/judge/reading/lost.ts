/**
 * Seen before and not now: a response that the sources do not let go at this age was elicited on an earlier
 * day and is not elicited now. One such is tried again; more of it is lost, and to be discussed. All of it
 * a side at a time.
 */
import type { CivilDate } from '../../age/civil.ts';
import { reflexOf, SIDES } from '../../case/finding.ts';
import type { Side } from '../../atlas/types.ts';
import type { Visit } from '../../case/case.ts';
import type { ChildReading } from './child.ts';
import { LIFELONG, LOST_TOGETHER, NOT_GONE } from './constants.ts';
import { Inferred } from './course.ts';
import { OTHER_SIDE, type SeenDay } from './days.ts';

/** Why it is lost: again on another day, several at once, one side alone, or beside another discussion. */
export type LostWhy = 'another-day' | 'several-at-once' | 'one-side' | 'beside-another';

export interface NotNow {
  reflex: string;
  /** What was tested of it, both times (`testOf`). */
  test: string;
  side: Side;
  /** The day on which it was not elicited, and the last before it on which it was. */
  on: CivilDate;
  seenOn: CivilDate;
  /** P(gone by this age) with the sources alone, if no child differs from all of them; under 0.05. */
  goneBy: number;
  /** On how many days it was not elicited since, this one included. */
  days: number;
  /** Whether the sources have it for life. */
  lifelong: boolean;
  /** Empty: to be watched and tried again at this visit. Else it is lost, for each of these reasons. */
  lost: readonly LostWhy[];
}

/** Whether anything else of a day is to be discussed, the reflex itself left out. */
export type Discussed = (on: CivilDate, besides: string) => boolean;

const thereOn = (days: readonly SeenDay[] | undefined, on: CivilDate): boolean =>
  days?.some((day) => day.on === on && day.there) ?? false;

type Found = Omit<NotNow, 'lost'>;

/** Every day of one side on which what was seen before was not elicited. */
function notNowOn(reading: ChildReading, test: string, side: Side): Found[] {
  const days = reading.days.get(test)?.sides[side];
  const prior = reading.priors.reflex(test, 0);
  const reflex = reflexOf(test);
  if (!days || !prior?.datedI) return [];
  const sources = new Inferred(prior, [], reading.clock.sdDays);
  const lifelong = sources.never('integrates') >= LIFELONG;
  const found: Found[] = [];
  let seenOn: CivilDate | undefined;
  let missing = 0;
  for (const { on, there } of days) {
    if (there) {
      seenOn = on;
      missing = 0;
    } else if (seenOn) {
      const goneBy = sources.by('integrates', reading.clock.dayOn(on));
      if (!(goneBy < NOT_GONE)) break; // from here on it may be gone
      found.push({ reflex, test, side, on, seenOn, goneBy, days: ++missing, lifelong });
    }
  }
  return found;
}

/** Everything seen before and not now, in the order of the reflexes, each with why it is lost, if it is. */
export function notNowOf(reading: ChildReading, discussed: Discussed = () => false): NotNow[] {
  const found = [...reading.days.keys()].flatMap((test) =>
    SIDES.flatMap((side) => notNowOn(reading, test, side)),
  );
  const reflexesOn = new Map<CivilDate, Set<string>>();
  for (const { on, reflex } of found)
    reflexesOn.set(on, (reflexesOn.get(on) ?? new Set<string>()).add(reflex));
  return found.map((one): NotNow => {
    const other = OTHER_SIDE[one.side];
    const lost: LostWhy[] = [];
    if (one.days > 1) lost.push('another-day');
    if (reflexesOn.get(one.on)!.size >= LOST_TOGETHER) lost.push('several-at-once');
    if (other && thereOn(reading.days.get(one.test)?.sides[other], one.on)) lost.push('one-side');
    if (discussed(one.on, one.reflex)) lost.push('beside-another');
    return { ...one, lost };
  });
}

/**
 * What a later skill takes the place of: a child who walks need not crawl. A parenting page of a state
 * health service says that this is no regression (read); which skills these are is ours.
 */
const REPLACED_BY: Readonly<Record<string, readonly string[]>> = {
  crawling: ['walking'],
  'standing-helped': ['standing', 'walking'],
  'walking-helped': ['walking'],
};

/** Whether a later skill that is seen at a visit takes the place of one that is not. */
export const isReplaced = (milestone: string, { milestones }: Pick<Visit, 'milestones'>): boolean =>
  REPLACED_BY[milestone]?.some((later) =>
    milestones.some((one) => one.milestone === later && one.seen),
  ) ?? false;

export interface LostMilestone {
  milestone: string;
  on: CivilDate;
  /** The last day before on which it was seen; null where only the carer says that it had been reached. */
  seenOn: CivilDate | null;
  /** Whether the carer says that it is lost. */
  confirmed: boolean;
  /** Watched where it was not seen again, discussed where the carer alone says so, today where both do. */
  asks: 'watch' | 'discuss' | 'today';
}

/** Milestones seen before and not now. @param carer whether the carer says on a day that one is lost */
export function lostMilestones(
  reading: ChildReading,
  carer: (milestone: string, on: CivilDate) => boolean = () => false,
): LostMilestone[] {
  const { milestoneDays } = reading;
  return [...milestoneDays].flatMap(([milestone, days]) => {
    let seenOn: CivilDate | null = null;
    return days.flatMap(({ on, there }): LostMilestone[] => {
      if (there) {
        seenOn = on;
        return [];
      }
      const replaced = REPLACED_BY[milestone]?.some((later) =>
        thereOn(milestoneDays.get(later), on),
      );
      const confirmed = carer(milestone, on);
      if (replaced || (!seenOn && !confirmed)) return [];
      const asks = !confirmed ? 'watch' : seenOn ? 'today' : 'discuss';
      return [{ milestone, on, seenOn, confirmed, asks }];
    });
  });
}
