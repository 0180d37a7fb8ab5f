/**
 * A record without identity: the same ages and findings, so the same verdicts, on other dates; label,
 * examiners and every free text are gone. What goes over is listed here by name, so that a part that
 * is added to a record later does not leave with it unasked.
 */
import {
  addDays,
  addMonths,
  calendarSpan,
  daysBetween,
  partsOf,
  type CalendarSpan,
  type CivilDate,
} from '../age/civil.ts';
import type { Case } from './case.ts';
import { NO_FOLLOW_UP } from './followUp.ts';

export interface Nameless {
  record: Case;
  /**
   * Whether every age counted in months and days reads as it did. Days and weeks always do; where no
   * other day of birth would keep the months, they may read a day or two otherwise.
   */
  sameMonths: boolean;
  /** Whether only the year of birth is another, since on no other day every limit falls as it did. */
  keepsDay: boolean;
}

export interface NamelessOptions {
  /** What stands in the place of the label. */
  label: string;
  /** What stands in the place of the nth examiner, from 1, in the order of their names. */
  examiner: (n: number) => string;
  /** Reflexes that an id of is no secret: those of the atlas. */
  known: Pick<ReadonlySet<string>, 'has'>;
  /** Limits in months after birth that decide which age counts: the sender's, and the customary one. */
  limitMonths: readonly number[];
  /** A whole number from 0 to below the count, by chance. */
  pick: (count: number) => number;
  /** A uuid by chance: by the ids of its visits a copy could be told to be one. */
  newId: () => string;
}

/** Four years in a row hold every place of the leap day: all that a count by the calendar can see. */
const FIRST = '2000-01-01' as CivilDate;
const CYCLE_DAYS = 1461;
/** So many days are tried for one that keeps the months too. */
const ENOUGH = 200;
/** Without a divisor in common with the cycle, so that steps of it come by every day. */
const STRIDE = 577;

const isSame = (a: CalendarSpan, b: CalendarSpan): boolean =>
  a.months === b.months && a.days === b.days;

const isSameDay = (a: CivilDate, b: CivilDate): boolean => {
  const [one, other] = [partsOf(a), partsOf(b)];
  return one.month === other.month && one.day === other.day;
};

/**
 * Another day of birth, on which every age in days falls as it did; if there is one, also every age in
 * months and days. A month's worth of days is left even to a child who was seen daily, since the
 * lengths of months are all that a count by the calendar goes by.
 */
function otherBirth(
  { child: { birth }, visits }: Case,
  { pick, limitMonths }: NamelessOptions,
): Omit<Nameless, 'record'> & { born: CivilDate } {
  const toDue = daysBetween(birth.born, birth.due);
  const isWithin = (born: CivilDate, on: CivilDate): boolean[] =>
    limitMonths.map((months) => on <= addMonths(born, months));
  const dates = [...new Set(visits.map(({ on }) => on))].map((on) => ({
    days: daysBetween(birth.born, on),
    within: isWithin(birth.born, on),
    since: calendarSpan(birth.born, on),
    corrected: calendarSpan(birth.due, on),
  }));
  /** 0: a limit falls otherwise. 1: the months read otherwise. 2: all is the same. */
  const likeness = (born: CivilDate): number => {
    const due = addDays(born, toDue);
    let level = 2;
    for (const { days, within, since, corrected } of dates) {
      const on = addDays(born, days);
      if (isWithin(born, on).some((is, i) => is !== within[i])) return 0;
      if (
        level === 2 &&
        !(isSame(calendarSpan(born, on), since) && isSame(calendarSpan(due, on), corrected))
      )
        level = 1;
    }
    return level;
  };
  const start = pick(CYCLE_DAYS);
  let second: CivilDate | undefined;
  let own = addDays(FIRST, start);
  for (let n = 0; n < CYCLE_DAYS; n++) {
    const born = addDays(FIRST, (start + n * STRIDE) % CYCLE_DAYS);
    if (second && n > ENOUGH) break;
    const level = likeness(born);
    if (level === 0) continue;
    if (isSameDay(born, birth.born) || isSameDay(addDays(born, toDue), birth.due)) own = born;
    else if (level === 2) return { born, sameMonths: true, keepsDay: false };
    else second ??= born;
  }
  return second
    ? { born: second, sameMonths: false, keepsDay: false }
    : { born: own, sameMonths: likeness(own) === 2, keepsDay: true };
}

/** The record on other dates and without names. */
export function withoutIdentity(record: Case, options: NamelessOptions): Nameless {
  const { child, visits, agreed, sheet } = record;
  const { label, examiner: examinerWord, known, newId } = options;
  const { born, ...said } = otherBirth(record, options);
  const by = daysBetween(child.birth.born, born);
  const moved = (date: CivilDate): CivilDate => addDays(date, by);
  // in the order of the names, so that two visits on one date stay in theirs
  const names = [...new Set(visits.map(({ examiner }) => examiner).filter(Boolean))].sort();
  const own = [
    ...new Set(
      [...visits.flatMap(({ findings }) => findings), ...agreed].map(({ reflex }) => reflex),
    ),
  ].filter((id) => !known.has(id));
  const reflexOf = (id: string): string =>
    known.has(id) ? id : `own-${String(own.indexOf(id) + 1)}`;
  return {
    ...said,
    record: {
      ...NO_FOLLOW_UP,
      sheet: sheet && {
        on: moved(sheet.on),
        reflexes: sheet.reflexes.filter((id) => known.has(id)),
      },
      child: {
        label,
        birth: {
          born,
          due: moved(child.birth.due),
          gestationalDays: child.birth.gestationalDays,
          dating: child.birth.dating,
        },
        datedBy: child.datedBy,
        invented: child.invented,
      },
      agreed: agreed.map(({ on, reflex, side, response, state, variant }) => ({
        on: moved(on),
        reflex: reflexOf(reflex),
        side,
        response,
        state,
        note: '',
        ...(variant === undefined ? {} : { variant }),
      })),
      visits: visits.map(({ on, examiner, findings, milestones }) => ({
        id: newId(),
        on: moved(on),
        examiner: examiner && examinerWord(names.indexOf(examiner) + 1),
        note: '',
        findings: findings.map(({ reflex, side, response, state, variant, tries }) => ({
          reflex: reflexOf(reflex),
          side,
          response,
          state,
          note: '',
          ...(variant === undefined ? {} : { variant }),
          ...(tries === undefined ? {} : { tries }),
        })),
        milestones: milestones.map(({ milestone, seen, lost }) => ({
          milestone,
          seen,
          ...(lost ? { lost } : {}),
        })),
      })),
    },
  };
}
