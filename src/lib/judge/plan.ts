/** What is worth testing in a child on a date, in an order that turns the infant least. */
import { dateAtAxisDay, DEFAULT_LIMITS, agesOn, type Ages } from '../age/clocks.ts';
import type { AxisDay } from '../age/axis.ts';
import type { CivilDate } from '../age/civil.ts';
import { sidesOf } from '../atlas/atlas.ts';
import type { Position, Reflex, Side } from '../atlas/types.ts';
import type { Case } from '../case/case.ts';
import { isAnswer } from '../case/finding.ts';
import { readAt, totalsOf, type Compiled } from './expectation.ts';
import { EMERGING, INTEGRATING } from './phases.ts';
import { judgeVisit, type JudgedFinding, type JudgeOptions } from './judge.ts';

/** Why a reflex is worth testing. */
export type PlanWhy =
  | { code: 'opening'; share: number }
  | { code: 'closing'; share: number }
  | { code: 'at-its-height' }
  | { code: 'open-question'; verdict: string; flags: readonly string[]; on: CivilDate }
  | { code: 'never-tested' };

export interface PlanLine {
  reflex: Reflex;
  sides: readonly Side[];
  /** How much the answer would tell, in bits of surprise plus what is open; see `tells`. */
  tells: number;
  why: readonly PlanWhy[];
}

/** From when the sources would expect a change that is awaited. */
export interface OpenQuestion {
  reflex: string;
  side: Side;
  verdict: string;
  awaits: 'to-appear' | 'to-integrate';
  /** The date from which most sources (at least half of those that date it) would expect it. */
  most: CivilDate | null;
  /** The date from which every source that dates it would expect it. */
  every: CivilDate | null;
}

export interface Plan {
  on: CivilDate;
  ages: Ages;
  lines: readonly PlanLine[];
  questions: readonly OpenQuestion[];
}

/** Positions in the order an examination passes through them, so that the infant is turned least. */
export const POSITION_ORDER: readonly Position[] = [
  'supine',
  'side-lying',
  'sitting',
  'upright-held',
  'standing',
  'prone-suspension',
  'prone',
  'hands-and-knees',
];

/** Entropy of a yes-or-no answer in bits: 1 when the sources expect either alike, 0 when sure. */
export const entropy = (p: number): number =>
  p <= 0 || p >= 1 ? 0 : -(p * Math.log2(p) + (1 - p) * Math.log2(1 - p));

/** An open question from last time adds this much, a reflex never tested that. Choices of ours. */
const OPEN_BONUS = 1;
const UNTESTED_BONUS = 0.25;
/** Below this much an answer is not worth turning the infant for. */
const WORTH = 0.25;

/** The latest judged answer on a reflex, over both sides: the one that asks for most. */
function lastAsking(record: Case, reflex: string, on: CivilDate, options: JudgeOptions) {
  const visits = record.visits.filter(
    (visit) => visit.on <= on && visit.findings.some((f) => f.reflex === reflex && isAnswer(f)),
  );
  const last = visits.at(-1);
  if (!last) return undefined;
  const findings = judgeVisit(record, last, options).findings.filter(
    (f) => f.finding.reflex === reflex,
  );
  return { on: last.on, findings };
}

/** Whether a judged finding leaves something to look at again. */
const isOpen = ({ judged, attention }: JudgedFinding): boolean =>
  attention === 'discuss' ||
  attention === 'watch' ||
  judged.verdict === 'closing' ||
  judged.verdict === 'may-still-appear';

function lineOf(
  reflex: Reflex,
  compiled: Compiled,
  record: Case,
  ages: Ages,
  options: JudgeOptions,
): PlanLine | undefined {
  const totals = totalsOf(readAt(compiled, ages.axisDay, ages.sdDays));
  if (!totals.anySpeaks) return undefined;
  const why: PlanWhy[] = [];
  let tells = entropy(totals.meanExpectation);
  const opening = totals.phases[EMERGING]! / totals.speaking;
  const closing = totals.phases[INTEGRATING]! / totals.speaking;
  if (opening >= 0.1) why.push({ code: 'opening', share: opening });
  if (closing >= 0.1) why.push({ code: 'closing', share: closing });
  const last = lastAsking(record, reflex.id, ages.on, options);
  const open = last?.findings.find(isOpen);
  if (open && last) {
    tells += OPEN_BONUS;
    const { judged, raised } = open;
    why.push({
      code: 'open-question',
      verdict: judged.verdict,
      flags: raised.map((r) => r.flag),
      on: last.on,
    });
  } else if (!last && totals.meanExpectation >= 0.5) {
    tells += UNTESTED_BONUS;
    why.push({ code: 'never-tested' });
    if (totals.meanEstablished >= 0.9) why.push({ code: 'at-its-height' });
  }
  return tells >= WORTH && why.length > 0
    ? { reflex, sides: sidesOf(reflex), tells, why }
    : undefined;
}

/** The days at which the sources that date a change would have it done, earliest first. */
function changeDays(compiled: Compiled, awaits: OpenQuestion['awaits']): number[] {
  const days = compiled.windows.flatMap((w) => {
    if (awaits === 'to-appear') return w.appears ? [w.appears.to] : w.byTerm ? [280] : [];
    return w.integrates?.to != null ? [w.integrates.to] : [];
  });
  return days.sort((a, b) => a - b);
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
  const dateOf = (day: number | undefined): CivilDate | null =>
    day === undefined
      ? null
      : dateAtAxisDay(record.child.birth, day as AxisDay, options.limits ?? DEFAULT_LIMITS);
  return {
    reflex: found.finding.reflex,
    side: found.finding.side,
    verdict,
    awaits,
    most: dateOf(days[Math.ceil(days.length / 2) - 1]),
    every: dateOf(days.at(-1)),
  };
}

/** Open questions: of each reflex and side, the latest answer that awaits a change. */
export function openQuestions(record: Case, on: CivilDate, options: JudgeOptions): OpenQuestion[] {
  const latest = new Map<string, JudgedFinding>();
  for (const visit of record.visits.filter((v) => v.on <= on))
    for (const found of judgeVisit(record, visit, options).findings)
      if (isAnswer(found.finding))
        latest.set(`${found.finding.reflex} ${found.finding.side}`, found);
  return [...latest.values()].flatMap((found) => questionOf(found, record, options) ?? []);
}

/** The plan for a date: grouped by position, upsetting ones last, the most telling first within. */
export function planFor(record: Case, on: CivilDate, options: JudgeOptions): Plan {
  const ages = agesOn(record.child.birth, on, options.limits ?? DEFAULT_LIMITS);
  const lines: PlanLine[] = [];
  for (const reflex of options.atlas.reflexes.values()) {
    const compiled = options.sheet.get(reflex.id);
    const line = compiled && lineOf(reflex, compiled, record, ages, options);
    if (line) lines.push(line);
  }
  lines.sort(
    (a, b) =>
      Number(a.reflex.upsetting) - Number(b.reflex.upsetting) ||
      POSITION_ORDER.indexOf(a.reflex.position) - POSITION_ORDER.indexOf(b.reflex.position) ||
      b.tells - a.tells,
  );
  return { on, ages, lines, questions: openQuestions(record, on, options) };
}
