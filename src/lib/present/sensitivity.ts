/** On what gestation at birth each verdict of a visit hangs: the nearest turning point on either side. */
import type { CivilDate } from '../age/civil.ts';
import type { Birth, CorrectionLimits } from '../age/clocks.ts';
import { DATING_SD_DAYS } from '../age/doubt.ts';
import { isAnswer } from '../case/finding.ts';
import type { JudgedFinding, JudgedVisit } from '../judge/judge.ts';
import { turnsOf, type Outcome } from '../judge/turns.ts';
import { sidesTogether, type OnSides } from './course.ts';

export interface Turning {
  found: JudgedFinding;
  was: Outcome;
  is: Outcome;
  /** It turns if born at this gestation (days) or earlier, or or later. */
  way: 'earlier' | 'later';
  days: number;
  /** Whether the dating leaves that gestation likely (95 of 100). */
  likely: boolean;
}

const REACH = 1.96;

/** The turning points of one finding: the nearest on either side. */
export function turningsOfOne(
  found: JudgedFinding,
  on: CivilDate,
  birth: Birth,
  limits: CorrectionLimits,
  /** Whether each gestation is taken as known for sure, instead of in the doubt of its dating. */
  known = false,
): Turning[] {
  const { stretches } = turnsOf({
    finding: found.finding,
    compiled: found.reading.compiled,
    birth,
    on,
    limits,
    known,
  });
  const at = birth.gestationalDays;
  const here = stretches.findIndex(({ fromDays, toDays }) => fromDays <= at && at <= toDays);
  const own = stretches[here];
  if (!own) return [];
  const reach = REACH * DATING_SD_DAYS[birth.dating];
  const turning = (
    way: Turning['way'],
    is: Turning['is'] | undefined,
    days: number | undefined,
  ): Turning[] =>
    is === undefined || days === undefined
      ? []
      : [{ found, was: own.verdict, is, way, days, likely: Math.abs(days - at) <= reach }];
  const [below, above] = [stretches[here - 1], stretches[here + 1]];
  return [
    ...turning('earlier', below?.verdict, below?.toDays),
    ...turning('later', above?.verdict, above?.fromDays),
  ];
}

/** Every turning point of a visit, the nearest first. */
export function turningsOf(visit: JudgedVisit, birth: Birth, limits: CorrectionLimits): Turning[] {
  const distance = ({ days }: Turning): number => Math.abs(days - birth.gestationalDays);
  return visit.findings
    .filter(({ finding }) => isAnswer(finding))
    .flatMap((found) => turningsOfOne(found, visit.visit.on, birth, limits))
    .sort((a, b) => distance(a) - distance(b));
}

export const turnsTogether = (turnings: readonly Turning[]): OnSides<Turning>[] =>
  sidesTogether(
    turnings,
    ({ found }) => found.finding.side,
    ({ found, was, is, way, days }) => [found.reflex.id, was, is, way, days].join(' '),
  );
