/**
 * Every kept child as the list of children knows it: the age today, what asked for attention on the
 * day it was last seen, what is open, and by when it is to be seen again. A record is judged once, when it
 * is first asked for, and again only when it has changed or other sources are judged by.
 */
import { asksMore } from '../judge/rules/rule.ts';
import { TERM_DAYS, fromMonths } from '../age/axis.ts';
import type { CivilDate } from '../age/civil.ts';
import { agesOn, DEFAULT_LIMITS, type Ages } from '../age/clocks.ts';
import { agesAt, type Case } from '../case/case.ts';
import type { ThinData, ThinVisit } from '../chart/thin.ts';
import { CaseJudge, type JudgedVisit, type JudgeOptions } from '../judge/judge.ts';
import { nextVisit, type NextVisit } from '../judge/nextVisit.ts';
import { openQuestions, type OpenQuestion } from '../judge/questions.ts';
import type { Kept } from '../store/store.ts';
import { folded } from '../platform/foldText.ts';
import { once } from '../platform/sets.ts';

/** Reflexes that ask to be discussed, and those to be watched; a reflex counts once, by its most. */
export interface Asks {
  discuss: number;
  watch: number;
}

/** A day on which the child was seen. */
export type SeenDay = ThinVisit & { on: CivilDate };

/** What does not change with the day. */
interface Read {
  byDay: readonly SeenDay[];
  asks: Asks;
  questions: readonly OpenQuestion[];
  next: NextVisit | undefined;
}

const NOTHING: Asks = { discuss: 0, watch: 0 };

/** What asks over some visits, each reflex counted once. */
function asksOf(visits: readonly JudgedVisit[]): Asks {
  const discuss = new Set<string>();
  const watch = new Set<string>();
  for (const { findings } of visits)
    for (const { reflex, attention } of findings) {
      if (asksMore(attention, 'watch')) discuss.add(reflex.id);
      if (attention === 'watch') watch.add(reflex.id);
    }
  for (const id of discuss) watch.delete(id);
  return { discuss: discuss.size, watch: watch.size };
}

/** Visits of one date together: two examiners on one morning are one day. */
function daysOf(visits: readonly JudgedVisit[]): SeenDay[] {
  const days = new Map<CivilDate, JudgedVisit[]>();
  for (const visit of visits) {
    const same = days.get(visit.visit.on);
    if (same) same.push(visit);
    else days.set(visit.visit.on, [visit]);
  }
  return [...days].map(([on, same]) => ({ on, day: same[0]!.ages.axisDay, ...asksOf(same) }));
}

function read(record: Case, options: JudgeOptions): Read {
  const judge = new CaseJudge(record, options);
  const visits = record.visits.map((visit) => judge.visit(visit));
  const last = record.visits.at(-1)?.on;
  const questions = last ? openQuestions(record, last, options, judge) : [];
  const byDay = daysOf(visits);
  const { discuss, watch } = byDay.at(-1) ?? NOTHING;
  return {
    byDay,
    asks: { discuss, watch },
    questions,
    next: nextVisit(judge, options, visits, questions),
  };
}

const reads = new WeakMap<JudgeOptions, WeakMap<Case, Read>>();

function readOnce(record: Case, options: JudgeOptions): Read {
  let known = reads.get(options);
  if (!known) reads.set(options, (known = new WeakMap()));
  let found = known.get(record);
  if (!found) known.set(record, (found = read(record, options)));
  return found;
}

/** Half of the 95 % spread, in standard deviations. */
const REACH = 1.96;

/** One child in the list. What costs judging is reckoned when it is first asked for. */
export class RollLine {
  readonly id: string;
  readonly record: Case;
  /** The day the list is read. */
  readonly on: CivilDate;
  /** The ages on that day; undefined before birth. */
  readonly ages: Ages | undefined;
  readonly examiners: readonly string[];
  readonly #options: JudgeOptions;
  #text: string | undefined;

  constructor({ id, record }: Kept, on: CivilDate, options: JudgeOptions) {
    this.id = id;
    this.record = record;
    this.on = on;
    this.#options = options;
    const { birth } = record.child;
    this.ages = on < birth.born ? undefined : agesAt(record, on, options.limits ?? DEFAULT_LIMITS);
    this.examiners = once(record.visits.map(({ examiner }) => examiner).filter(Boolean));
  }

  get label(): string {
    return this.record.child.label;
  }

  get lastSeen(): CivilDate | undefined {
    return this.record.visits.at(-1)?.on;
  }

  /** What asked for attention on the day the child was last seen, by any examiner of that day. */
  get asks(): Asks {
    return this.#read.asks;
  }

  /** Open questions, the two sides of one asked once. */
  get open(): number {
    return new Set(this.#read.questions.map(({ reflex }) => reflex)).size;
  }

  get next(): NextVisit | undefined {
    return this.#read.next;
  }

  get isDue(): boolean {
    const { next } = this;
    return next !== undefined && next.by <= this.on;
  }

  /** What a search looks through: the label, the tags and the examiners. */
  get text(): string {
    return (this.#text ??= folded([this.label, ...this.record.tags, ...this.examiners].join(' ')));
  }

  /** Every day on which the child was seen, with what asked then. */
  get days(): readonly SeenDay[] {
    return this.#read.byDay;
  }

  get thin(): ThinData {
    const { birth } = this.record.child;
    const { ages } = this;
    return {
      born: agesOn(birth, birth.born, this.#options.limits ?? DEFAULT_LIMITS).axisDay,
      now: ages && { day: ages.axisDay, spreadDays: REACH * ages.sdDays },
      visits: this.days,
    };
  }

  get #read(): Read {
    return readOnce(this.record, this.#options);
  }
}

const lines = new WeakMap<JudgeOptions, WeakMap<Kept, RollLine>>();

/** The children as lines; a child that has not changed keeps its line for the day. */
export function rollOf(
  shelf: readonly Kept[],
  on: CivilDate,
  options: JudgeOptions,
): readonly RollLine[] {
  let known = lines.get(options);
  if (!known) lines.set(options, (known = new WeakMap()));
  const kept = known;
  return shelf.map((one) => {
    let line = kept.get(one);
    if (line?.on !== on) kept.set(one, (line = new RollLine(one, on, options)));
    return line;
  });
}

/** The age that counts in months after term; negative before it, undefined before birth. */
export const monthsNow = ({ ages }: RollLine): number | undefined =>
  ages && (ages.axisDay - TERM_DAYS) / (fromMonths(1) - TERM_DAYS);
