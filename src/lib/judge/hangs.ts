/** On what a verdict hangs that is not firm: the sources, the due date, or both. */
import { agesOn, birthFromGestation, type Birth, type CorrectionLimits } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import { MAX_GESTATION_DAYS, MIN_GESTATION_DAYS } from '../age/gestation.ts';
import type { Finding } from '../case/finding.ts';
import { readAt, type Compiled, type Reading } from './expectation.ts';
import { verdictOf, voicesOf, type VerdictWord } from './verdict.ts';

/** How many of the sources that speak give a verdict as their likeliest. */
export interface Agreement {
  agree: number;
  of: number;
}

export function agreementOn(finding: Finding, verdict: VerdictWord, reading: Reading): Agreement {
  const speaking = voicesOf(finding.response, reading).filter((voice) => voice.speaks > 0.5);
  const agree = new Set(speaking.filter((v) => v.verdict === verdict).map((v) => v.source));
  return { agree: agree.size, of: new Set(speaking.map((v) => v.source)).size };
}

/** A gestation at birth from which, or up to which, a verdict would be firm or would hold. */
export interface TurningPoint {
  /** `firm`: every source would give the verdict; `holds`: it would still be the largest share. */
  kind: 'firm' | 'holds';
  /** Gestation at birth in days, inclusive; null where that end is open within the doubt. */
  fromDays: number | null;
  toDays: number | null;
}

/** How many standard deviations of the dating are looked at: 95 % of it. */
const REACH = 1.96;

/**
 * Over every gestation at birth that the dating leaves likely (95 %), taken as known: the run of days
 * around the recorded one (or nearest to it) on which the verdict is firm; where none is, on which it
 * holds. Undefined when the age is exact or the whole range agrees.
 */
export function turningPoint(
  finding: Finding,
  verdict: VerdictWord,
  compiled: Compiled,
  birth: Birth,
  on: CivilDate,
  limits: CorrectionLimits,
): TurningPoint | undefined {
  const { sdDays } = agesOn(birth, on, limits);
  if (sdDays === 0) return undefined;
  const reach = Math.ceil(REACH * sdDays);
  const low = Math.max(birth.gestationalDays - reach, MIN_GESTATION_DAYS);
  const high = Math.min(birth.gestationalDays + reach, MAX_GESTATION_DAYS);
  const judgedIf = (gestation: number) => {
    const shifted = birthFromGestation(birth.born, gestation, birth.dating);
    if ('code' in shifted) return undefined;
    return verdictOf(finding, readAt(compiled, agesOn(shifted, on, limits).axisDay, 0));
  };
  const run = (kind: TurningPoint['kind']): TurningPoint | undefined => {
    const good: number[] = [];
    for (let day = low; day <= high; day++) {
      const judged = judgedIf(day);
      if (judged?.verdict === verdict && (kind === 'holds' || judged.firm)) good.push(day);
    }
    if (good.length === 0 || good.length === high - low + 1) return undefined;
    const nearest = good.reduce((a, b) =>
      Math.abs(b - birth.gestationalDays) < Math.abs(a - birth.gestationalDays) ? b : a,
    );
    let from = nearest;
    let to = nearest;
    while (good.includes(from - 1)) from--;
    while (good.includes(to + 1)) to++;
    return { kind, fromDays: from === low ? null : from, toDays: to === high ? null : to };
  };
  return run('firm') ?? run('holds');
}
