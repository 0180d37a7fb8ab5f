/** On what a verdict hangs that is not firm: the sources, the due date, or both. */
import { agesOn, type Birth, type CorrectionLimits } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS } from '../age/gestation.ts';
import type { Finding } from '../case/finding.ts';
import { readAt, type Compiled, type Reading } from './expectation.ts';
import { SPEAKS_AT_LEAST } from './thresholds.ts';
import { verdictOf, voicesOf, type Judged, type VerdictWord, type Voice } from './verdict.ts';

/** How many of the sources that speak give a verdict as their likeliest, and how many voices those are. */
export interface Agreement {
  agree: number;
  of: number;
  /** The same with each family of copies counted once. */
  voices: { agree: number; of: number };
}

export function agreementOn(finding: Finding, verdict: VerdictWord, reading: Reading): Agreement {
  const speaking = voicesOf(finding.response, reading).filter(
    (voice) => voice.speaks >= SPEAKS_AT_LEAST,
  );
  const agreeing = speaking.filter((v) => v.verdict === verdict);
  const count = (voices: readonly Voice[], by: 'source' | 'family'): number =>
    new Set(voices.map((voice) => voice[by])).size;
  return {
    agree: count(agreeing, 'source'),
    of: count(speaking, 'source'),
    voices: { agree: count(agreeing, 'family'), of: count(speaking, 'family') },
  };
}

/** The gestations at birth, were one known for sure, with which a verdict would be firm or would hold. */
export interface TurningPoint {
  /** `firm`: every source would give the verdict; `holds`: it would still be the largest share. */
  kind: 'firm' | 'holds';
  /** Gestation at birth in days, inclusive; null where the run goes on to the end of what is likely. */
  fromDays: number | null;
  toDays: number | null;
}

/** How many standard deviations of the dating are looked at: 95 % of it. */
const REACH = 1.96;

/** From one day to another, both included. */
interface Run {
  from: number;
  to: number;
}

/** The run of days that pass a test around a day, or the one nearest to it. */
function runAround(
  day: number,
  { from, to }: Run,
  passes: (day: number) => boolean,
): Run | undefined {
  let nearest: number | undefined;
  for (let step = 0; step <= to - from && nearest === undefined; step++)
    for (const near of [day - step, day + step])
      if (nearest === undefined && near >= from && near <= to && passes(near)) nearest = near;
  if (nearest === undefined) return undefined;
  const run = { from: nearest, to: nearest };
  while (run.from > from && passes(run.from - 1)) run.from--;
  while (run.to < to && passes(run.to + 1)) run.to++;
  return run;
}

/**
 * Over every gestation at birth that the dating leaves likely (95 %) and that would still have the
 * age corrected, taken as known: the run of days on which the verdict is firm; where there is none,
 * on which it holds. Undefined when the age is exact or the whole range agrees.
 */
export function turningPoint(
  finding: Finding,
  verdict: VerdictWord,
  compiled: Compiled,
  birth: Birth,
  on: CivilDate,
  limits: CorrectionLimits,
): TurningPoint | undefined {
  const { sdDays, axisDay } = agesOn(birth, on, limits);
  if (sdDays === 0) return undefined;
  const recorded = birth.gestationalDays;
  const reach = Math.ceil(REACH * sdDays);
  const likely: Run = {
    from: Math.max(recorded - reach, MIN_GESTATION_DAYS),
    to: Math.min(recorded + reach, MAX_GESTATION_DAYS, limits.pretermBelowDays - 1),
  };
  const judged = new Map<number, Judged>();
  const judgedIf = (gestation: number): Judged => {
    let known = judged.get(gestation);
    if (!known) {
      // born the same day at another gestation: the age on the axis shifts by as many days
      known = verdictOf(finding, readAt(compiled, axisDay + gestation - recorded, 0));
      judged.set(gestation, known);
    }
    return known;
  };
  const find = (kind: TurningPoint['kind']): Run | undefined =>
    runAround(recorded, likely, (day) => {
      const found = judgedIf(day);
      return found.verdict === verdict && (kind === 'holds' || found.firm);
    });
  const firm = find('firm');
  const run = firm ?? find('holds');
  if (!run || (run.from === likely.from && run.to === likely.to)) return undefined;
  return {
    kind: firm ? 'firm' : 'holds',
    fromDays: run.from === likely.from ? null : run.from,
    toDays: run.to === likely.to ? null : run.to,
  };
}
