/**
 * One clock for all visits of a child: corrected if born before the limit of gestation, at whatever age.
 * A change of clock within one course would move its visits against each other.
 */
import { addDays, daysBetween, type CivilDate } from '../../age/civil.ts';
import { TERM_DAYS } from '../../age/axis.ts';
import { DEFAULT_LIMITS, type Birth, type CorrectionLimits } from '../../age/clocks.ts';
import { DATING_SD_DAYS } from '../../age/doubt.ts';
import { SHIFT_NODES, SHIFT_REACH } from './constants.ts';
import { density } from '../normal.ts';

export interface Clock {
  /** The place of a date on the axis, in days. */
  dayOn: (on: CivilDate) => number;
  /** The date of a place on the axis, to the nearest day. */
  dateOf: (day: number) => CivilDate;
  /** How far all visits may be shifted together: a standard deviation in days; 0 is exact. */
  sdDays: number;
}

export function clockOf(
  birth: Birth,
  limits: Pick<CorrectionLimits, 'pretermBelowDays'> = DEFAULT_LIMITS,
): Clock {
  const preterm = birth.gestationalDays < limits.pretermBelowDays;
  const atBirth = preterm ? birth.gestationalDays : TERM_DAYS;
  return {
    dayOn: (on) => atBirth + daysBetween(birth.born, on),
    dateOf: (day) => addDays(birth.born, Math.round(day - atBirth)),
    sdDays: preterm ? DATING_SD_DAYS[birth.dating] : 0,
  };
}

/** One shift of all visits, in days, and how likely it is. */
export interface Shift {
  days: number;
  weight: number;
}

/** Those of each standard deviation asked for: there are as many as ways of dating. */
const kept = new Map<number, readonly Shift[]>([[0, [{ days: 0, weight: 1 }]]]);

/** Even nodes with normal weights that sum to 1; one node where the dating leaves no doubt. */
export function shiftsOf(sdDays: number): readonly Shift[] {
  let shifts = kept.get(sdDays);
  if (!shifts) kept.set(sdDays, (shifts = nodesOf(sdDays)));
  return shifts;
}

function nodesOf(sdDays: number): readonly Shift[] {
  const step = (2 * SHIFT_REACH) / (SHIFT_NODES - 1);
  const z = Array.from({ length: SHIFT_NODES }, (_, k) => -SHIFT_REACH + k * step);
  const sum = z.reduce((total, at) => total + density(at), 0);
  return z.map((at) => ({ days: at * sdDays, weight: density(at) / sum }));
}
