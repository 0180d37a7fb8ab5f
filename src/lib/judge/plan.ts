/** What is worth testing in a child on a date, in an order that turns the infant least. */
import type { AxisDay } from '../age/axis.ts';
import { agesOn, dateAtAxisDay, DEFAULT_LIMITS, type Ages, type Birth } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import { sidesOf } from '../atlas/core.ts';
import type { Position, Reflex, Side } from '../atlas/types.ts';
import type { Case, Visit } from '../case/case.ts';
import type { InfantState, Response } from '../case/finding.ts';
import { readAt, totalsOf, type Compiled, type Totals } from './expectation.ts';
import { CaseJudge, type JudgedVisit, type JudgeOptions } from './judge.ts';
import { FEW, lastTime, type LastTime } from './lastTime.ts';
import { EMERGING, INTEGRATING } from './phases.ts';
import { changeBy, openQuestions, type OpenQuestion } from './questions.ts';

export type { OpenQuestion } from './questions.ts';

/** Why a reflex is worth testing, or is not. */
export type PlanWhy =
  /** A window that opens or closes now, and by when every source that dates it has it done. */
  | {
      code: 'opening' | 'closing';
      share: number;
      by: AxisDay | null;
      /** The calendar date of `by`; null without a child. */
      date: CivilDate | null;
      /** Whether every source dates it, rather than only some. */
      byAll: boolean;
    }
  | { code: 'at-its-height' }
  | { code: 'open-question'; verdict: string; flags: readonly string[]; on: CivilDate }
  | { code: 'unread'; response: Response; state: InfantState; on: CivilDate }
  | { code: 'never-tested' }
  /** Neither opening nor closing, and yet open: some sources have it there, others gone. */
  | { code: 'divided' }
  | { code: 'settled'; now: 'there' | 'gone'; on: CivilDate }
  /** No chosen source says anything of this age. */
  | { code: 'silent' };

export interface PlanLine {
  reflex: Reflex;
  sides: readonly Side[];
  /** How much the answer would tell, in bits, 0 to 1; see `entropy`. */
  tells: number;
  why: readonly PlanWhy[];
}

/** Every reflex at an age: those worth testing, and the rest, each in the order of testing. */
export interface Lines {
  lines: readonly PlanLine[];
  rest: readonly PlanLine[];
}

export interface Plan extends Lines {
  on: CivilDate;
  ages: Ages;
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

/**
 * How much an answer tells: the entropy of a yes-or-no answer in bits (Shannon 1948), 1 when it is as
 * open as the toss of a coin, 0 when it is sure. `p` is the mean expectation: that of each source that
 * speaks, averaged over the ages the dating leaves likely, then over the sources.
 *
 * Whoever asks wants to know whether the response is still there in this child. Before, that is known
 * with probability p; after, for sure; so all of the entropy is told. Taken apart, it is what is told
 * of the sources and the true age (their mutual information with the answer) and what is told of this
 * child's own time within the windows. The first alone would be no measure of the use: it is nothing
 * where all sources agree that half of infants still show the response, just where looking tells most.
 */
export const entropy = (p: number): number =>
  p <= 0 || p >= 1 ? 0 : -(p * Math.log2(p) + (1 - p) * Math.log2(1 - p));

/** Below this many bits an answer alone is not worth turning the infant for. A choice of ours. */
const WORTH = 0.25;
/** From this mean expectation on a response should be there, so that its absence would matter. */
const DUE = 0.5;
/** From this mean probability of established on it should stand at its height. */
const HEIGHT = 0.9;

function changing(
  code: 'opening' | 'closing',
  totals: Totals,
  compiled: Compiled,
  dateOf: (day: AxisDay) => CivilDate | null,
): PlanWhy[] {
  const share = totals.phases[code === 'opening' ? EMERGING : INTEGRATING]! / totals.speaking;
  if (share < FEW) return [];
  const { day, byAll } = changeBy(compiled, code === 'opening' ? 'to-appear' : 'to-integrate');
  return [{ code, share, by: day, date: day === null ? null : dateOf(day), byAll }];
}

/** What last time gives as a reason. */
function reasonOf(last: LastTime): PlanWhy[] {
  switch (last.code) {
    case 'open':
      return [{ code: 'open-question', verdict: last.verdict, flags: last.flags, on: last.on }];
    case 'unread': {
      const { response, state } = last.finding;
      return [{ code: 'unread', response, state, on: last.on }];
    }
    case 'settled':
      return [{ code: 'settled', now: last.now, on: last.on }];
    case 'never':
      return [{ code: 'never-tested' }];
    case 'answered':
      return [];
  }
}

/** A child with the visits up to the date, each judged when it is first asked for. */
interface Seen {
  birth: Birth;
  visits: readonly Visit[];
  judged: (visit: Visit) => JudgedVisit;
}

/** An age on the axis at which lines are made, for a child or for none. */
interface At {
  axisDay: AxisDay;
  sdDays: number;
  options: JudgeOptions;
  child?: Seen;
}

function lineOf(reflex: Reflex, compiled: Compiled, at: At): { line: PlanLine; worth: boolean } {
  const { child, options } = at;
  const totals = totalsOf(readAt(compiled, at.axisDay, at.sdDays));
  const last = child && lastTime(child.visits, reflex, totals, child.judged);
  const sides = sidesOf(reflex);
  const asked = last?.code === 'open' || last?.code === 'unread';
  const reasons = last ? reasonOf(last) : [];
  if (!totals.anySpeaks) {
    const why = [
      ...reasons.filter(({ code }) => code !== 'never-tested'),
      { code: 'silent' as const },
    ];
    return { line: { reflex, sides, tells: 0, why }, worth: false };
  }
  const limits = options.limits ?? DEFAULT_LIMITS;
  const dateOf = (day: AxisDay): CivilDate | null =>
    child ? dateAtAxisDay(child.birth, day, limits) : null;
  const moving = [
    ...changing('opening', totals, compiled, dateOf),
    ...changing('closing', totals, compiled, dateOf),
  ];
  const isNew = last === undefined || last.code === 'never';
  const tells = entropy(totals.meanExpectation);
  const isTelling = tells >= WORTH;
  const why: PlanWhy[] = [
    ...reasons,
    ...moving,
    ...(isTelling && moving.length === 0 ? [{ code: 'divided' as const }] : []),
    ...(isNew && totals.meanEstablished >= HEIGHT ? [{ code: 'at-its-height' as const }] : []),
  ];
  const worth =
    asked || (last?.code !== 'settled' && isTelling) || (isNew && totals.meanExpectation >= DUE);
  return { line: { reflex, sides, tells, why }, worth };
}

const isAsked = ({ why }: PlanLine): boolean =>
  why.some(({ code }) => code === 'open-question' || code === 'unread');

/**
 * The order of testing: what upsets last, then by position, then what is open from last time, then the
 * most telling. What is open stands as a reason of its own and adds nothing to the bits.
 */
export const inOrder = (a: PlanLine, b: PlanLine): number =>
  Number(a.reflex.upsetting) - Number(b.reflex.upsetting) ||
  POSITION_ORDER.indexOf(a.reflex.position) - POSITION_ORDER.indexOf(b.reflex.position) ||
  Number(isAsked(b)) - Number(isAsked(a)) ||
  b.tells - a.tells ||
  (a.reflex.id < b.reflex.id ? -1 : Number(a.reflex.id > b.reflex.id));

function linesAt(at: At): Lines {
  const all = [...at.options.atlas.reflexes.values()].flatMap((reflex) => {
    const compiled = at.options.sheet.get(reflex.id);
    return compiled ? [lineOf(reflex, compiled, at)] : [];
  });
  const of = (isWorth: boolean): PlanLine[] =>
    all
      .filter(({ worth }) => worth === isWorth)
      .map(({ line }) => line)
      .sort(inOrder);
  return { lines: of(true), rest: of(false) };
}

/** What is worth testing at an age, without a child. @param sdDays doubt in that age, days */
export const linesForAge = (axisDay: AxisDay, sdDays: number, options: JudgeOptions): Lines =>
  linesAt({ axisDay, sdDays, options });

/** The plan for a date not before birth (the caller has checked). */
export function planFor(record: Case, on: CivilDate, options: JudgeOptions): Plan {
  const ages = agesOn(record.child.birth, on, options.limits ?? DEFAULT_LIMITS);
  const { axisDay, sdDays } = ages;
  const judge = new CaseJudge(record, options);
  const known = new Map<Visit, JudgedVisit>();
  const judged = (visit: Visit): JudgedVisit => {
    const found = known.get(visit) ?? judge.visit(visit);
    known.set(visit, found);
    return found;
  };
  const visits = record.visits.filter((visit) => visit.on <= on);
  const child = { birth: record.child.birth, visits, judged };
  return {
    on,
    ages,
    ...linesAt({ axisDay, sdDays, options, child }),
    questions: openQuestions(record, on, options),
  };
}
