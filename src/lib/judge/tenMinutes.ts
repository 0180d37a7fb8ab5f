/**
 * What to test in a few minutes: first what was flagged last time or needs a second try, then of the other
 * lines of a plan those that are most informative about what is open in this child, chosen together.
 *
 * The objective f(S) of a set S of reflexes, in bits, is the sum of
 * - over the reflexes of S, how much the answer is expected to lower the entropy of "it is there now"
 *   (`answerTells`): their mutual information, with the error rates of reading a child, at P(there) of the
 *   child's own course, or of the sources where they do not date both of its events;
 * - over the open orders, H(order) x P(just one of the two has happened by now), which is when a visit tells
 *   which came first, times (r1 + r2) / 3 + max(r1, r2) / 3, r being how surely a station is read by the
 *   best reflex of S for it (0 where none is in S): one of two tells two thirds, both tell all of it.
 *
 * Each term grows with S and by less the more is in it already (it is monotone and submodular), so that what
 * two reflexes would add about one order is counted once. Treating courses and orders as separate is a
 * simplification of ours. f is greatest within the time by branch and bound: with k the sum of the best gains
 * per minute that still fit, f(S) + k is a bound of all sets that contain S. It is the same at every run.
 */
import type { Reflex, Station } from '../atlas/types.ts';
import { testOf } from '../case/finding.ts';
import { reflexesAt } from './sequence.ts';
import type { PlanLine } from './plan.ts';
import type { ChildReading } from './reading/child.ts';
import {
  IMAGINED,
  MINUTES_BY_POSITION,
  ONE_STATION,
  TEN_MINUTES,
  UPSETTING_MINUTES,
} from './reading/constants.ts';

/** Minutes to test a reflex, both sides included. */
export const minutesFor = ({ position, upsetting }: Pick<Reflex, 'position' | 'upsetting'>) =>
  MINUTES_BY_POSITION[position] + (upsetting ? UPSETTING_MINUTES : 0);

const bits = (p: number): number => (p > 0 && p < 1 ? -p * Math.log2(p) : 0);
const entropyOf = (p: number): number => bits(p) + bits(1 - p);

/** How much an answer is expected to lower the entropy of "it is there", in bits. @param there P(there) */
export function answerTells(there: number, missed: number, imagined = IMAGINED): number {
  const elicited = there * (1 - missed) + (1 - there) * imagined;
  const left = there * entropyOf(missed) + (1 - there) * entropyOf(imagined);
  return Math.max(0, entropyOf(elicited) - left);
}

/** A reflex that may be tested. */
export interface Candidate {
  id: string;
  minutes: number;
  /** Information that its answer adds about the reflex itself, bits. */
  tells: number;
  /** How surely it is read, 0 to 1: 1 less its error rates. */
  read: number;
}

/** An open order: which reflexes show each of its two stations. A milestone's has none, as it needs no test. */
export interface OpenOrder {
  stations: readonly (readonly string[])[];
  /** Information that a visit may add about it, bits. */
  bits: number;
}

/** f(S) of the docstring, in bits. */
export function toldBy(chosen: readonly Candidate[], orders: readonly OpenOrder[]): number {
  let sum = 0;
  const read = new Map<string, number>();
  for (const one of chosen) {
    sum += one.tells;
    read.set(one.id, one.read);
  }
  for (const { stations, bits: open } of orders) {
    const shares = stations.map((ids) => Math.max(0, ...ids.map((id) => read.get(id) ?? 0)));
    if (shares.length === 0) continue;
    const most = Math.max(...shares);
    const rest = shares.reduce((total, share) => total + share, 0) - most;
    sum += open * (shares.length === 1 ? most : ONE_STATION * most + (1 - ONE_STATION) * rest);
  }
  return sum;
}

export interface Choice {
  chosen: readonly Candidate[];
  minutes: number;
  bits: number;
}

/** Below this many bits a gain is none. */
const TINY = 1e-9;

/** So many sets are looked at, at most; the best so far is taken then. A choice of ours. */
const MOST_SETS = 4000;

/**
 * The set that adds most within a time to what is tested anyway. Candidates that add nothing are left out.
 * @param anyway tested whatever it adds; the time holds it
 */
export function chooseWithin(
  candidates: readonly Candidate[],
  orders: readonly OpenOrder[],
  minutes: number,
  anyway: readonly Candidate[] = [],
): Choice {
  const begun = anyway.reduce((sum, one) => sum + one.minutes, 0);
  let best: Choice = { chosen: anyway, minutes: begun, bits: toldBy(anyway, orders) };
  let sets = 0;
  // an order that a reflex does not show changes nothing of what it adds
  const shown = new Map(
    candidates.map((one) => [
      one,
      orders.filter(({ stations }) => stations.some((ids) => ids.includes(one.id))),
    ]),
  );
  const gainOf = (chosen: readonly Candidate[], one: Candidate): number => {
    const its = shown.get(one)!;
    return its.length === 0 ? one.tells : toldBy([...chosen, one], its) - toldBy(chosen, its);
  };

  const look = (chosen: readonly Candidate[], spent: number, from: readonly Candidate[]): void => {
    sets++;
    const told = toldBy(chosen, orders);
    if (told > best.bits + TINY) best = { chosen, minutes: spent, bits: told };
    const gains = from
      .filter((one) => spent + one.minutes <= minutes)
      .map((one) => ({ one, gain: gainOf(chosen, one) }))
      .filter(({ gain }) => gain > TINY)
      .sort((a, b) => b.gain / b.one.minutes - a.gain / a.one.minutes);
    let [left, bound] = [minutes - spent, told];
    for (const { one, gain } of gains) {
      const part = Math.min(1, left / one.minutes);
      bound += part * gain;
      left -= part * one.minutes;
      if (left <= 0) break;
    }
    const first = gains[0];
    if (!first || bound <= best.bits + TINY || sets >= MOST_SETS) return;
    const rest = gains.slice(1).map(({ one }) => one);
    look([...chosen, first.one], spent + first.one.minutes, rest);
    look(chosen, spent, rest);
  };

  look(anyway, begun, candidates);
  return best;
}

const isTestable = (station: Station): boolean => station.event !== 'reached';

/** The orders of a child that a visit on a day of its clock may tell. */
export function openOrders(reading: ChildReading, day: number): OpenOrder[] {
  const { atlas } = reading.priors;
  const orders = reading.orders();
  return atlas.sequences.flatMap(({ id, stations }) =>
    (orders.get(id) ?? []).flatMap(({ first, second, order, reason, probability }): OpenOrder[] => {
      if (order !== 'open' || reason === 'undated') return [];
      const pair = [stations[first]!, stations[second]!];
      const [a, b] = pair.map((station) => reading.reached(station)?.(day) ?? NaN);
      const justOne = a! * (1 - b!) + b! * (1 - a!);
      const open = entropyOf(probability) * justOne;
      if (!(open > TINY)) return [];
      const shown = pair.filter(isTestable).map((station) => reflexesAt(station, atlas));
      return [{ stations: shown, bits: open }];
    }),
  );
}

/** A line as a candidate. @param reading, day the child's; left out without a child */
function candidateOf(
  { reflex, variant, expected }: PlanLine,
  reading?: ChildReading,
  day = 0,
): Candidate {
  const { missed } = reflex.absence;
  const course = reading?.course(testOf({ reflex: reflex.id, variant }));
  const isDated = course && course.prior.datedA && course.prior.datedI && !course.contradicted;
  const there = isDated ? course.states(day).there : expected;
  return {
    id: reflex.id,
    minutes: minutesFor(reflex),
    tells: answerTells(there, missed),
    read: 1 - missed - IMAGINED,
  };
}

export interface TenMinutes extends Omit<Choice, 'chosen'> {
  /** In the order of testing. */
  lines: readonly PlanLine[];
}

const ASKED: ReadonlySet<string> = new Set(['persisting', 'missing', 'early']);

/** Flagged at the last visit, or to be tried a second time. */
export const isFlagged = ({ why }: PlanLine): boolean =>
  why.some(
    (one) =>
      one.code === 'second-try' ||
      (one.code === 'open-question' && (one.flags.length > 0 || ASKED.has(one.verdict))),
  );

/** What is flagged, in the order of testing, as far as the time goes. */
function flaggedWithin(candidates: ReadonlyMap<PlanLine, Candidate>, minutes: number): Candidate[] {
  let left = minutes;
  return [...candidates].flatMap(([line, one]) => {
    if (!isFlagged(line) || one.minutes > left) return [];
    left -= one.minutes;
    return [one];
  });
}

/**
 * What to test within ten minutes, of the lines of a plan.
 * @param child its reading, and the day of the visit on its clock; without a child the sources alone count
 */
export function withinTen(
  lines: readonly PlanLine[],
  child?: { reading: ChildReading; day: number },
): TenMinutes {
  const candidates = new Map(
    lines.map((line) => [line, candidateOf(line, child?.reading, child?.day)]),
  );
  const orders = child ? openOrders(child.reading, child.day) : [];
  const flagged = flaggedWithin(candidates, TEN_MINUTES);
  const others = [...candidates.values()].filter((one) => !flagged.includes(one));
  const { chosen, minutes, bits: told } = chooseWithin(others, orders, TEN_MINUTES, flagged);
  const ids = new Set(chosen.map(({ id }) => id));
  return { lines: lines.filter(({ reflex }) => ids.has(reflex.id)), minutes, bits: told };
}
