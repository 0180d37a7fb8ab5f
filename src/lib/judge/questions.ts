/** By when the sources would have a response there, or gone; and which answers of a child await that. */
import { TERM, type AxisDay } from '../age/axis.ts';
import type { CivilDate } from '../age/civil.ts';
import { dateAtAxisDay, DEFAULT_LIMITS } from '../age/clocks.ts';
import type { Side } from '../atlas/types.ts';
import type { Case } from '../case/case.ts';
import { isAnswer, keepLatest } from '../case/finding.ts';
import type { Compiled } from './expectation.ts';
import { daysOf, findingsOf } from './day.ts';
import { CaseJudge, worstFirst, type JudgedFinding, type JudgeOptions } from './judge.ts';

export type Awaits = 'to-appear' | 'to-integrate';

/** From when the sources would expect a change that is awaited. */
export interface OpenQuestion {
  reflex: string;
  /** Of which variant of the response; absent where the finding does not say. */
  variant?: string;
  side: Side;
  verdict: string;
  awaits: Awaits;
  /** The date from which most sources (at least half of those that date it) would expect it. */
  most: CivilDate | null;
  /** The date from which every source that dates it would expect it. */
  every: CivilDate | null;
}

/** The days at which the sources that date a change would have it done, earliest first. */
function changeDays({ windows }: Compiled, awaits: Awaits): AxisDay[] {
  const days = windows.flatMap((w): AxisDay[] => {
    if (awaits === 'to-appear') return w.appears ? [w.appears.to] : w.byTerm ? [TERM] : [];
    return w.integrates?.to != null ? [w.integrates.to] : [];
  });
  return days.sort((a, b) => a - b);
}

/** The day by which at least half of some days have come; they stand in order. */
const mostOf = (days: readonly AxisDay[]): AxisDay | undefined =>
  days[Math.ceil(days.length / 2) - 1];

/** By when a change is done in every source that dates it, and whether every source does date it. */
export interface ChangeBy {
  day: AxisDay | null;
  /** By when it is done in most of them: at least half. */
  most: AxisDay | null;
  byAll: boolean;
}

export function changeBy(compiled: Compiled, awaits: Awaits): ChangeBy {
  const days = changeDays(compiled, awaits);
  return {
    day: days.at(-1) ?? null,
    most: mostOf(days) ?? null,
    byAll: days.length === compiled.windows.length,
  };
}

function questionOf(
  found: JudgedFinding,
  record: Case,
  options: JudgeOptions,
): OpenQuestion | undefined {
  const { verdict } = found.judged;
  const awaits =
    verdict === 'closing' || verdict === 'persisting'
      ? 'to-integrate'
      : verdict === 'may-still-appear' || verdict === 'missing'
        ? 'to-appear'
        : undefined;
  if (!awaits) return undefined;
  const days = changeDays(found.reading.compiled, awaits);
  const dateOf = (day: AxisDay | undefined): CivilDate | null =>
    day === undefined
      ? null
      : dateAtAxisDay(record.child.birth, day, options.limits ?? DEFAULT_LIMITS);
  const { reflex, variant, side } = found.finding;
  return {
    reflex,
    ...(variant === undefined ? {} : { variant }),
    side,
    verdict,
    awaits,
    most: dateOf(mostOf(days)),
    every: dateOf(days.at(-1)),
  };
}

/**
 * Open questions: of each reflex, variant and side, the latest answer that awaits a change.
 * @param judge the record's, if it was made already
 */
export function openQuestions(
  record: Case,
  on: CivilDate,
  options: JudgeOptions,
  judge = new CaseJudge(record, options),
): OpenQuestion[] {
  const latest = new Map<string, JudgedFinding>();
  const visits = record.visits.filter((v) => v.on <= on).map((visit) => judge.visit(visit));
  for (const day of daysOf(visits))
    for (const found of worstFirst(findingsOf(day)).reverse())
      if (isAnswer(found.finding)) keepLatest(latest, found.finding, found);
  return [...latest.values()].flatMap((found) => questionOf(found, record, options) ?? []);
}
