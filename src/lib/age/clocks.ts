/**
 * The four ages of an infant and which of them counts.
 * Definitions: AAP 2004, "Age terminology during the perinatal period".
 */
import { toAxisDay, TERM_DAYS, type AxisDay } from './axis.ts';
import { addDays, addMonths, daysBetween, type CivilDate } from './civil.ts';
import { DATING_SD_DAYS, type DatingMethod } from './doubt.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS } from './gestation.ts';

/** When the corrected age counts. Both limits are settings; the screen says which age was used. */
export interface CorrectionLimits {
  /** Born before this gestation, in days: 37w0d by custom. */
  pretermBelowDays: number;
  /** Up to and including this many calendar months after birth. */
  untilMonths: number;
}

export const DEFAULT_LIMITS: CorrectionLimits = { pretermBelowDays: 37 * 7, untilMonths: 24 };

/** Birth with its dating, refined: the due date and the gestation agree. */
export interface Birth {
  born: CivilDate;
  /** The day the pregnancy would have reached 40w0d. */
  due: CivilDate;
  /** Gestational age at birth, days. */
  gestationalDays: number;
  dating: DatingMethod;
}

/** Why an age counts: the infant was born at term, is past the limit, or is corrected. */
export type CountsWhy = 'born-at-term' | 'past-limit' | 'born-early';

export interface Ages {
  on: CivilDate;
  due: CivilDate;
  gestationalDays: number;
  chronologicalDays: number;
  postmenstrualDays: number;
  /** Negative before term. */
  correctedDays: number;
  counts: 'corrected' | 'chronological';
  why: CountsWhy;
  /** Where the age that counts lies on the axis. */
  axisDay: AxisDay;
  /** Standard deviation of that age, days; 0 when it is chronological. */
  sdDays: number;
}

export type BirthProblem =
  | { code: 'gestation-range'; gestationalDays: number }
  | { code: 'due-range'; gestationalDays: number; born: CivilDate; due: CivilDate };

const inRange = (days: number): boolean => days >= MIN_GESTATION_DAYS && days <= MAX_GESTATION_DAYS;

/** A birth from the gestation in days; a gestation out of 22w0d to 44w6d is a problem. */
export function birthFromGestation(
  born: CivilDate,
  gestationalDays: number,
  dating: DatingMethod,
): Birth | BirthProblem {
  if (!inRange(gestationalDays)) return { code: 'gestation-range', gestationalDays };
  return { born, due: addDays(born, TERM_DAYS - gestationalDays), gestationalDays, dating };
}

/** A birth from the due date: gestation = 280 - (due - born). */
export function birthFromDue(
  born: CivilDate,
  due: CivilDate,
  dating: DatingMethod,
): Birth | BirthProblem {
  const gestationalDays = TERM_DAYS - daysBetween(born, due);
  if (!inRange(gestationalDays)) return { code: 'due-range', gestationalDays, born, due };
  return { born, due, gestationalDays, dating };
}

/** The ages on a date not before birth (the caller has checked). */
export function agesOn(birth: Birth, on: CivilDate, limits = DEFAULT_LIMITS): Ages {
  const chronologicalDays = daysBetween(birth.born, on);
  const postmenstrualDays = birth.gestationalDays + chronologicalDays;
  const preterm = birth.gestationalDays < limits.pretermBelowDays;
  const corrected = preterm && on <= addMonths(birth.born, limits.untilMonths);
  return {
    on,
    due: birth.due,
    gestationalDays: birth.gestationalDays,
    chronologicalDays,
    postmenstrualDays,
    correctedDays: postmenstrualDays - TERM_DAYS,
    counts: corrected ? 'corrected' : 'chronological',
    why: !preterm ? 'born-at-term' : corrected ? 'born-early' : 'past-limit',
    axisDay: toAxisDay(corrected ? postmenstrualDays : TERM_DAYS + chronologicalDays),
    sdDays: corrected ? DATING_SD_DAYS[birth.dating] : 0,
  };
}

/**
 * The date on which the age that counts reaches a place on the axis, rounded up to a whole day.
 * Corrected while the correction holds on that date, else chronological.
 */
export function dateAtAxisDay(birth: Birth, day: AxisDay, limits = DEFAULT_LIMITS): CivilDate {
  const after = Math.ceil(day - TERM_DAYS);
  const byDue = addDays(birth.due, after);
  if (birth.gestationalDays >= limits.pretermBelowDays) return addDays(birth.born, after);
  const limit = addMonths(birth.born, limits.untilMonths);
  if (byDue <= limit) return byDue;
  // past the limit the age jumps ahead to the chronological one: the day it is first reached
  const byBirth = addDays(birth.born, after);
  const firstPast = addDays(limit, 1);
  return byBirth > firstPast ? byBirth : firstPast;
}
