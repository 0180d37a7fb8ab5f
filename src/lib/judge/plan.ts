/**
 * What is worth testing in a child on a date: a core set for the age, then what else is, each in an order
 * that turns the infant least.
 */
import type { AxisDay } from '../age/axis.ts';
import { agesOn, dateAtAxisDay, DEFAULT_LIMITS, type Ages, type Birth } from '../age/clocks.ts';
import type { CivilDate } from '../age/civil.ts';
import { sidesOf } from '../atlas/core.ts';
import type { Position, Reflex, Side } from '../atlas/types.ts';
import { asTested } from '../atlas/variants.ts';
import type { Case, Visit } from '../case/case.ts';
import { testOf, type InfantState, type Response } from '../case/finding.ts';
import { coreSet, isForTeachingOnly, tellsNothing, type AtAge } from './coreSet.ts';
import { readAt, totalsOf, type Compiled, type Totals } from './expectation.ts';
import { CaseJudge, type JudgedVisit, type JudgeOptions } from './judge.ts';
import { FEW, lastTime, type LastTime } from './lastTime.ts';
import { EMERGING, INTEGRATING } from './phases.ts';
import { EXPECTED_THERE } from './reading/constants.ts';
import type { ChildReading } from './reading/child.ts';
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
  /** Missing once, last time: on these sides. */
  | { code: 'second-try'; sides: readonly Side[]; on: CivilDate }
  | { code: 'open-question'; verdict: string; flags: readonly string[]; on: CivilDate }
  | { code: 'unread'; response: Response; state: InfantState; on: CivilDate }
  | { code: 'never-tested' }
  /** Neither opening nor closing, and yet open: some sources have it there, others gone. */
  | { code: 'divided' }
  | { code: 'settled'; now: 'there' | 'gone'; on: CivilDate }
  /** No chosen source says anything of this age. */
  | { code: 'silent' }
  /** An absence would be expected, and tells little of this reflex. */
  | { code: 'tells-nothing' }
  /** Listed for teaching, and not to be tested in a clinic. */
  | { code: 'teaching-only' };

export interface PlanLine {
  reflex: Reflex;
  /** As which of its variants it is to be tested, once the record says one; the reflex is named after it. */
  variant?: string;
  sides: readonly Side[];
  /** How much the answer would tell, in bits, 0 to 1; see `entropy`. */
  tells: number;
  /** The mean expectation of the sources that speak, 0 to 1; 0 where none does. */
  expected: number;
  why: readonly PlanWhy[];
  /** Of the core set for the age: how many voices speak of it then; 0 where it is not. */
  coreVoices: number;
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
  /** The child read over all visits, for what is to be chosen among the lines. */
  reading: ChildReading;
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
    case 'open': {
      const { verdict, flags, on, again } = last;
      const open: PlanWhy = { code: 'open-question', verdict, flags, on };
      return again.length > 0 ? [{ code: 'second-try', sides: again, on }, open] : [open];
    }
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

/** What is known of a reflex at an age: what the sources say, and what the last visits left. */
interface Begun {
  at: AtAge;
  variant: string | undefined;
  last: LastTime | undefined;
}

function lineOf(
  { at: read, variant, last }: Begun,
  coreVoices: number,
  { child, options }: At,
): { line: PlanLine; worth: boolean } {
  const { reflex, compiled, totals } = read;
  const asked = last?.code === 'open' || last?.code === 'unread';
  const reasons = last ? reasonOf(last) : [];
  const limits = options.limits ?? DEFAULT_LIMITS;
  const dateOf = (day: AxisDay): CivilDate | null =>
    child ? dateAtAxisDay(child.birth, day, limits) : null;
  const moving = totals.anySpeaks
    ? [
        ...changing('opening', totals, compiled, dateOf),
        ...changing('closing', totals, compiled, dateOf),
      ]
    : [];
  const expected = totals.anySpeaks ? totals.meanExpectation : 0;
  const tells = entropy(expected);
  const ofVariant = variant === undefined ? {} : { variant };
  const base = { reflex, ...ofVariant, sides: sidesOf(reflex), tells, expected };
  const left = (code: 'silent' | 'tells-nothing' | 'teaching-only') => {
    const known = reasons.filter((one) => one.code !== 'never-tested');
    return {
      line: { ...base, why: [...known, { code }, ...moving], coreVoices: 0 },
      worth: false,
    };
  };
  if (!totals.anySpeaks) return left('silent');
  if (isForTeachingOnly(reflex)) return left('teaching-only');
  if (!asked && last?.code !== 'settled' && tellsNothing(read)) return left('tells-nothing');
  const isNew = last === undefined || last.code === 'never';
  const isTelling = tells >= WORTH;
  const why: PlanWhy[] = [
    ...reasons,
    ...moving,
    ...(isTelling && moving.length === 0 ? [{ code: 'divided' as const }] : []),
    ...(isNew && totals.meanEstablished >= HEIGHT ? [{ code: 'at-its-height' as const }] : []),
  ];
  // what was seen to have gone would be looked at for a return; what is there for whether it stays
  const isGone = last?.code === 'settled' && last.now === 'gone';
  const isCore = coreVoices > 0 && !isGone;
  const worth =
    asked ||
    isCore ||
    (last?.code !== 'settled' && isTelling) ||
    (isNew && totals.meanExpectation >= EXPECTED_THERE);
  return { line: { ...base, why, coreVoices: isCore ? coreVoices : 0 }, worth };
}

const isAsked = ({ why }: PlanLine): boolean =>
  why.some(({ code }) => code === 'open-question' || code === 'unread');

/** What a line belongs to, in the order of testing: what upsets is last, of the core set or not. */
export const PARTS = ['core', 'also', 'upsetting'] as const;
export type Part = (typeof PARTS)[number];

export const partOf = ({ reflex, coreVoices }: PlanLine): Part =>
  reflex.upsetting ? 'upsetting' : coreVoices > 0 ? 'core' : 'also';

/**
 * The order of testing: the core set, then the rest, what upsets last (of the core set first); in each by
 * position, then what is open from last time, then the most telling. What is open is a reason of its own
 * and adds nothing to the bits.
 */
export const inOrder = (a: PlanLine, b: PlanLine): number =>
  PARTS.indexOf(partOf(a)) - PARTS.indexOf(partOf(b)) ||
  Number(b.coreVoices > 0) - Number(a.coreVoices > 0) ||
  POSITION_ORDER.indexOf(a.reflex.position) - POSITION_ORDER.indexOf(b.reflex.position) ||
  Number(isAsked(b)) - Number(isAsked(a)) ||
  b.tells - a.tells ||
  (a.reflex.id < b.reflex.id ? -1 : Number(a.reflex.id > b.reflex.id));

/**
 * As what a reflex may be tested: as a whole, or as each of its variants once the record says one. What does not
 * say its variant counts beside them as long as it was seen last.
 */
function variantsFor({ id }: Reflex, { child, options }: At): readonly (string | undefined)[] {
  const variants = options.atlas.variants.get(id);
  if (!variants || !child) return [undefined];
  const looked = child.visits.flatMap(({ findings }) => findings.filter((f) => f.reflex === id));
  if (looked.every(({ variant }) => variant === undefined)) return [undefined];
  return looked.at(-1)?.variant === undefined ? [undefined, ...variants] : variants;
}

/** What is left open first, then what was not seen through, then what tells most. */
function isMoreWanted(a: Begun, b: Begun): boolean {
  const rank = ({ last }: Begun): number =>
    last?.code === 'open' || last?.code === 'unread' ? 2 : last?.code === 'settled' ? 0 : 1;
  const tells = ({ at: { totals } }: Begun): number =>
    totals.anySpeaks ? entropy(totals.meanExpectation) : -1;
  return (rank(a) - rank(b) || tells(a) - tells(b)) > 0;
}

/** A reflex at an age, as that of its variants which is most worth testing: a line is of one of them. */
function begin(reflex: Reflex, at: At): Begun[] {
  const { axisDay: ageDays, sdDays, child, options } = at;
  const all = variantsFor(reflex, at).flatMap((variant): Begun[] => {
    const compiled = options.sheet.get(testOf({ reflex: reflex.id, variant }));
    if (!compiled) return [];
    const totals = totalsOf(readAt(compiled, ageDays, sdDays));
    const last = child && lastTime(child.visits, reflex, variant, totals, child.judged);
    const tested = asTested(reflex, variant);
    return [{ at: { reflex: tested, compiled, totals, ageDays, sdDays }, variant, last }];
  });
  const [first, ...others] = all;
  return first ? [others.reduce((best, one) => (isMoreWanted(one, best) ? one : best), first)] : [];
}

function linesAt(at: At): Lines {
  const begun = [...at.options.atlas.reflexes.values()].flatMap((reflex) => begin(reflex, at));
  const core = coreSet(begun.map((one) => one.at));
  const all = begun.map((one) => lineOf(one, core.get(one.at.reflex.id) ?? 0, at));
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
  const visits = judge.read.visits.filter((visit) => visit.on <= on);
  const child = { birth: record.child.birth, visits, judged };
  return {
    on,
    ages,
    ...linesAt({ axisDay, sdDays, options, child }),
    questions: openQuestions(record, on, options, judge),
    reading: judge.reading,
  };
}
