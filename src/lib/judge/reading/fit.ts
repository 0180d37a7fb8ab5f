/**
 * The age at which the findings of one visit would be most ordinary. It reads sources and treats reflexes as
 * independent, so that its interval is too narrow; it is no developmental age of a normed test. There is no
 * prior around the child's own age: that would shrink a delay and look certain.
 */
import type { Visit } from '../../case/case.ts';
import { reflexOf } from '../../case/finding.ts';
import { DAYS_PER_MONTH } from '../../age/axis.ts';
import {
  FIT_FROM,
  FIT_MILESTONES,
  FIT_REFLEXES,
  FIT_RELATIVE,
  FIT_WIDEST_MONTHS,
  IMAGINED,
  INTERVAL,
  LAST_DAY,
  LIFELONG,
  MILESTONE_MISSED,
  MODE_RISE,
  MODE_SHARE,
} from './constants.ts';
import { shiftsOf } from './clock.ts';
import type { Priors } from './child.ts';
import { Inferred } from './course.ts';
import { daysOf } from './days.ts';
import type { PairPrior } from './prior.ts';

/** What comes and goes, what comes and stays, and what is reached. */
export type FitKind = 'primitive' | 'postural' | 'milestones';

export type FitHidden = 'too-few' | 'too-wide' | 'several-modes';

export interface Fit {
  kind: FitKind;
  /** How many reflexes or milestones take part. */
  takingPart: number;
  /** Axis days; NaN where none takes part. */
  median: number;
  /** The ends of the 90 % interval; null: cut off by an end of the axis ("at 7 months or after"). */
  low: number | null;
  high: number | null;
  /** Why it is not shown; null: it is. */
  hidden: FitHidden | null;
  /** Whether it belongs on the line over visits: shown, with both ends. */
  onLine: boolean;
}

/** How many days a best-fitting age is looked for on. */
export const DAYS = LAST_DAY - FIT_FROM;

/** One answer that takes part. */
interface Answer {
  prior: PairPrior;
  there: boolean;
  missed: number;
}

/** The logarithms of what is likely at the middle of each day from term on. */
interface Logs {
  there: Float64Array;
  not: Float64Array;
}

/** A prior has one error rate: it is that of its reflex, or of all milestones. */
const kept = new WeakMap<PairPrior, Logs>();

function logsOf({ prior, missed }: Answer): Logs {
  let logs = kept.get(prior);
  if (!logs) {
    const sources = new Inferred(prior, [], 0);
    const elicited = Float64Array.from({ length: DAYS }, (_, day) => {
      const { there } = sources.states(FIT_FROM + day + 0.5);
      return IMAGINED + (1 - missed - IMAGINED) * Math.min(1, Math.max(0, there));
    });
    logs = { there: elicited.map(Math.log), not: elicited.map((p) => Math.log(1 - p)) };
    kept.set(prior, logs);
  }
  return logs;
}

/** The likelihood of all answers at each day, its greatest 1. */
function likelihoodOf(answers: readonly Answer[]): Float64Array {
  const sum = new Float64Array(DAYS);
  for (const answer of answers) {
    const { there, not } = logsOf(answer);
    const logs = answer.there ? there : not;
    for (let day = 0; day < DAYS; day++) sum[day]! += logs[day]!;
  }
  const greatest = sum.reduce((most, one) => Math.max(most, one), -Infinity);
  return sum.map((one) => Math.exp(one - greatest));
}

/** The same in doubt of the dating: over each shift. Beyond an end of the axis it is as at the end. */
function inDoubt(likelihood: Float64Array, sdDays: number): Float64Array {
  if (sdDays === 0) return likelihood;
  const sum = new Float64Array(DAYS);
  for (const shift of shiftsOf(sdDays)) {
    const whole = Math.round(shift.days);
    for (let day = 0; day < DAYS; day++) {
      const from = Math.min(Math.max(day - whole, 0), DAYS - 1);
      sum[day]! += shift.weight * likelihood[from]!;
    }
  }
  const greatest = sum.reduce((most, one) => Math.max(most, one), 0);
  return sum.map((one) => one / greatest);
}

/** Whether the likelihood rises again, away from its greatest, after a real dip. */
function hasSecondMode(likelihood: Float64Array): boolean {
  const top = likelihood.indexOf(1);
  for (const step of [-1, 1]) {
    let least = 1;
    for (let day = top; day >= 0 && day < DAYS; day += step) {
      const here = likelihood[day]!;
      least = Math.min(least, here);
      if (here >= MODE_SHARE && here >= MODE_RISE * least) return true;
    }
  }
  return false;
}

/** The place on the axis below which a share of the likelihood lies. */
function quantileOf(likelihood: Float64Array, share: number): number {
  let left = share * likelihood.reduce((sum, one) => sum + one, 0);
  let day = 0;
  while (day < DAYS - 1 && left > likelihood[day]!) left -= likelihood[day++]!;
  return FIT_FROM + day + Math.min(1, left / likelihood[day]!);
}

/**
 * What a likelihood says of the age. @param likelihood for each day from term on, its greatest 1
 * @param takingPart how many answers it is of, @param least and how many must take part
 */
export function fitFrom(
  kind: FitKind,
  likelihood: Float64Array,
  takingPart: number,
  least: number,
): Fit {
  const tail = (1 - INTERVAL) / 2;
  const median = quantileOf(likelihood, 0.5);
  const cutLow = likelihood[0]! >= FIT_RELATIVE;
  const cutHigh = likelihood[DAYS - 1]! >= FIT_RELATIVE;
  // where one end is cut off, the other must not depend on how long the axis is
  const first = FIT_FROM + likelihood.findIndex((one) => one >= FIT_RELATIVE);
  const last = FIT_FROM + likelihood.findLastIndex((one) => one >= FIT_RELATIVE) + 1;
  const low = cutLow ? null : cutHigh ? first : quantileOf(likelihood, tail);
  const high = cutHigh ? null : cutLow ? last : quantileOf(likelihood, 1 - tail);
  const open = low === null || high === null;
  const wide = open
    ? low === null && high === null // cut off at both ends: the findings fit any age
    : high - low >= FIT_WIDEST_MONTHS * DAYS_PER_MONTH;
  const hidden =
    takingPart < least
      ? 'too-few'
      : hasSecondMode(likelihood)
        ? 'several-modes'
        : wide
          ? 'too-wide'
          : null;
  return { kind, takingPart, median, low, high, hidden, onLine: hidden === null && !open };
}

function fitOf(kind: FitKind, answers: readonly Answer[], least: number, sdDays: number): Fit {
  const takingPart = answers.length;
  if (takingPart > 0)
    return fitFrom(kind, inDoubt(likelihoodOf(answers), sdDays), takingPart, least);
  return { kind, takingPart, median: NaN, low: null, high: null, hidden: 'too-few', onLine: false };
}

/** What the sources have stay for life more likely than not. */
const stays = (prior: PairPrior): boolean => prior.neverI / prior.possible >= LIFELONG;

/**
 * The three best-fitting ages of one visit, from what was answered at it: reflexes of which the chosen
 * sources date both events, and milestones with a published window.
 * @param sdDays of the dating, 0 where the age is exact
 */
export function fitsOf(visit: Visit, priors: Priors, sdDays: number): Fit[] {
  const primitive: Answer[] = [];
  const postural: Answer[] = [];
  for (const [test, { whole }] of daysOf([visit])) {
    const prior = priors.reflex(test);
    const strict = priors.reflex(test, 0);
    const [day] = whole;
    if (!day || !prior?.datedA || !prior.datedI || !strict) continue;
    const { missed } = priors.atlas.reflexes.get(reflexOf(test))!.absence;
    (stays(strict) ? postural : primitive).push({ prior, there: day.there, missed });
  }
  const milestones = visit.milestones.flatMap(({ milestone, seen }): Answer[] => {
    const prior = priors.milestone(milestone);
    return prior ? [{ prior, there: seen, missed: MILESTONE_MISSED }] : [];
  });
  return [
    fitOf('primitive', primitive, FIT_REFLEXES, sdDays),
    fitOf('postural', postural, FIT_REFLEXES, sdDays),
    fitOf('milestones', milestones, FIT_MILESTONES, sdDays),
  ];
}
