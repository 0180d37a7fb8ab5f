/**
 * What a verdict hangs on, exactly: over every gestational age at birth that a record may hold, the
 * birth date being sure, which verdict one finding would get.
 */
import { addDays, type CivilDate } from '../age/civil.ts';
import { agesOn, type Birth, type CorrectionLimits } from '../age/clocks.ts';
import { TERM_DAYS } from '../age/axis.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS } from '../age/gestation.ts';
import { isElicited, type Finding } from '../case/finding.ts';
import { Certificate, massesAt, type Masses } from './certify.ts';
import { readAt, type Compiled } from './expectation.ts';
import { verdictOf, type Judged, type VerdictWord } from './verdict.ts';

export type Outcome = VerdictWord | 'not-judged';

/** One finding of one visit, and all that its verdict rests on. */
export interface Question {
  finding: Pick<Finding, 'response' | 'state'>;
  /** The reflex's windows under the chosen sources. */
  compiled: Compiled;
  birth: Birth;
  /** The visit's date, not before birth. */
  on: CivilDate;
  limits: CorrectionLimits;
  /** Whether each gestation is taken as known for sure, instead of in the doubt of its dating. */
  known?: boolean;
}

/** From one gestation at birth to another, in days, both included. */
export interface Stretch {
  fromDays: number;
  toDays: number;
  verdict: Outcome;
}

/** The same in due dates, both included. */
export interface DueStretch {
  from: CivilDate;
  to: CivilDate;
  verdict: Outcome;
}

export interface Turns {
  /** Cover 22w0d to 44w6d without a gap; neighbours differ. */
  stretches: readonly Stretch[];
  /** How many gestations had to be judged for it. */
  evaluations: number;
}

/** The same birth date at another gestation. */
const bornAt = (birth: Birth, gestationalDays: number): Birth => ({
  ...birth,
  gestationalDays,
  due: addDays(birth.born, TERM_DAYS - gestationalDays),
});

/** The verdict at one gestation at birth. */
function judgedAt({ finding, compiled, birth, on, limits, known }: Question, day: number): Judged {
  const { axisDay, sdDays } = agesOn(bornAt(birth, day), on, limits);
  return verdictOf(finding, readAt(compiled, axisDay, known ? 0 : sdDays));
}

/**
 * The verdict at every gestation at birth, 22w0d to 44w6d. From the correction limit on, and past
 * its last month, the age is chronological and nothing turns. Before it, an exact age changes its
 * verdict only at corners of windows; an age in doubt is halved down to the day on which it changes,
 * wherever the ends of a span do not prove what lies between (certify.ts).
 */
export function turnsOf(question: Question): Turns {
  const judged = new Map<number, Outcome>();
  const at = (day: number): Outcome => {
    let outcome = judged.get(day);
    if (outcome === undefined) judged.set(day, (outcome = judgedAt(question, day).verdict));
    return outcome;
  };
  const first = judgedAt(question, MIN_GESTATION_DAYS);
  judged.set(MIN_GESTATION_DAYS, first.verdict);
  const never = first.verdict === 'not-judged' && first.why.code !== 'silent';
  const last = never ? MIN_GESTATION_DAYS - 1 : lastCorrected(question);
  if (last >= MIN_GESTATION_DAYS) walk(question, last, at);
  if (!never && last < MAX_GESTATION_DAYS) at(Math.max(last + 1, MIN_GESTATION_DAYS));
  return { stretches: joined(judged), evaluations: judged.size };
}

/** The longest gestation at which the age would be corrected; below the range when at none. */
function lastCorrected({ birth, on, limits }: Question): number {
  const shortest = agesOn(bornAt(birth, MIN_GESTATION_DAYS), on, limits);
  if (shortest.counts !== 'corrected') return MIN_GESTATION_DAYS - 1;
  return Math.min(MAX_GESTATION_DAYS, Math.ceil(limits.pretermBelowDays) - 1);
}

/** Judges enough gestations, from the shortest to `last`, for the verdict of every one to be known. */
function walk(question: Question, last: number, at: (day: number) => Outcome): void {
  const { finding, compiled, birth, on, limits, known } = question;
  const { axisDay, sdDays } = agesOn(bornAt(birth, MIN_GESTATION_DAYS), on, limits);
  const ageOf = (day: number): number => axisDay + day - MIN_GESTATION_DAYS;
  if (known || sdDays === 0) {
    for (const edge of compiled.edges) {
      const day = MIN_GESTATION_DAYS + Math.ceil(edge) - axisDay; // the first on or past the edge
      if (day > MIN_GESTATION_DAYS && day <= last) at(day);
    }
    return;
  }
  const certificate = new Certificate(compiled, isElicited(finding.response));
  const masses = new Map<number, Masses>();
  const massesOf = (day: number): Masses => {
    let found = masses.get(day);
    if (!found) masses.set(day, (found = massesAt(compiled, ageOf(day), sdDays)));
    return found;
  };
  const settle = (from: number, to: number): void => {
    const same = at(from) === at(to);
    if (to - from <= 1) return;
    if (same && certificate.holds(at(from), massesOf(from), massesOf(to))) return;
    const middle = Math.floor((from + to) / 2);
    settle(from, middle);
    settle(middle, to);
  };
  settle(MIN_GESTATION_DAYS, last);
}

/** Stretches from the days that were judged: the verdict of each holds until the next. */
function joined(judged: ReadonlyMap<number, Outcome>): Stretch[] {
  const stretches: Stretch[] = [];
  for (const [day, verdict] of [...judged].sort(([a], [b]) => a - b)) {
    const open = stretches.at(-1);
    if (open?.verdict === verdict) continue;
    if (open) open.toDays = day - 1;
    stretches.push({ fromDays: day, toDays: MAX_GESTATION_DAYS, verdict });
  }
  return stretches;
}

/** The nearest gestations on either side of the recorded one that give another verdict. */
export interface NearestTurns {
  verdict: Outcome;
  /** Born at this gestation or earlier (until the next turn) it would be the other verdict. */
  below: { atMostDays: number; verdict: Outcome } | null;
  /** Born at this gestation or later. */
  above: { atLeastDays: number; verdict: Outcome } | null;
}

/** The turning points around a gestation within 22w0d to 44w6d. */
export function nearestTurns({ stretches }: Turns, gestationalDays: number): NearestTurns {
  const index = stretches.findIndex(({ toDays }) => gestationalDays <= toDays);
  const [before, here, after] = [stretches[index - 1], stretches[index]!, stretches[index + 1]];
  return {
    verdict: here.verdict,
    below: before ? { atMostDays: before.toDays, verdict: before.verdict } : null,
    above: after ? { atLeastDays: after.fromDays, verdict: after.verdict } : null,
  };
}

/** The stretches by due date, earliest first: due = born + 280 - gestation. */
export function dueStretches({ stretches }: Turns, born: CivilDate): DueStretch[] {
  return stretches
    .map(({ fromDays, toDays, verdict }) => ({
      from: addDays(born, TERM_DAYS - toDays),
      to: addDays(born, TERM_DAYS - fromDays),
      verdict,
    }))
    .reverse();
}
