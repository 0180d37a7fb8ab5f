/**
 * What the chosen sources lead one to expect of a reflex before a child is seen: when it appears (A) and
 * when it integrates (I), given A < I. Either may be never. Each distribution function is piecewise
 * linear between a few days, so that every probability below is a closed form.
 */
import { TERM } from '../../age/axis.ts';
import type { Window } from '../window.ts';
import { FIRST_DAY, LAST_DAY, ODD, ODD_NEVER } from './constants.ts';

/** A part of a prior: uniform from one day to another, or never. */
export interface Piece {
  from: number;
  /** Infinity with `from` Infinity: never. */
  to: number;
  weight: number;
}

/** One event as a mixture of pieces whose weights sum to 1. */
export interface EventPrior {
  pieces: readonly Piece[];
  /** Whether a chosen source dates it. Where none does, the broad prior alone is integrated over. */
  dated: boolean;
}

const NEVER = (weight: number): Piece => ({ from: Infinity, to: Infinity, weight });

/** What differs from every source. */
const broad = (weight: number): Piece[] => [
  { from: FIRST_DAY, to: LAST_DAY, weight: weight * (1 - ODD_NEVER) },
  NEVER(weight * ODD_NEVER),
];

/** A printed span held to the axis: what is before it counts as its first day, what is after as never. */
function held(from: number, to: number, weight: number): Piece[] {
  // a span of no width would be a jump: it is a day wide, the precision of the axis
  const [a, b] = to > from ? [from, to] : [from - 0.5, from + 0.5];
  const share = (low: number, high: number): number =>
    (weight * Math.max(0, Math.min(b, high) - Math.max(a, low))) / (b - a);
  return [
    { from: FIRST_DAY, to: FIRST_DAY, weight: share(-Infinity, FIRST_DAY) },
    {
      from: Math.max(a, FIRST_DAY),
      to: Math.min(b, LAST_DAY),
      weight: share(FIRST_DAY, LAST_DAY),
    },
    NEVER(share(LAST_DAY, Infinity)),
  ].filter((piece) => piece.weight > 0);
}

type Said = (window: Window) => readonly [from: number, to: number] | undefined;

const appearsSaid: Said = ({ appears, byTerm }) =>
  appears ? [appears.from, appears.to] : byTerm ? [FIRST_DAY, TERM] : undefined;

const integratesSaid: Said = ({ integrates, lifelong }) =>
  lifelong
    ? [Infinity, Infinity]
    : integrates?.to != null
      ? [integrates.from, integrates.to]
      : undefined;

/** Each family of copies that dates the event has one voice, shared by its rows. */
function eventPrior(windows: readonly Window[], said: Said, odd: number): EventPrior {
  const byVoice = new Map<string, (readonly [number, number])[]>();
  for (const window of windows) {
    const span = said(window);
    if (!span) continue;
    const { family } = window.claim;
    byVoice.set(family, [...(byVoice.get(family) ?? []), span]);
  }
  if (byVoice.size === 0) return { pieces: broad(1), dated: false };
  const pieces = [...byVoice.values()].flatMap((spans) =>
    spans.flatMap(([from, to]) => {
      const weight = (1 - odd) / byVoice.size / spans.length;
      return from === Infinity ? [NEVER(weight)] : held(from, to, weight);
    }),
  );
  return { pieces: odd > 0 ? [...pieces, ...broad(odd)] : pieces, dated: true };
}

/** What a prior says of a day, before the condition that A comes before I. */
export interface Row {
  /** P(A by the day). */
  a: number;
  /** P(I by the day). */
  i: number;
  /** P(A by the day, and I not after A). */
  m: number;
  /** Densities of A and of I there, per day. */
  fa: number;
  fi: number;
}

export const emptyRow = (): Row => ({ a: 0, i: 0, m: 0, fa: 0, fi: 0 });

/** The prior of two events of which the first, if both happen, comes first. */
export interface PairPrior {
  /** The days where a density changes, ascending; the first may hold a jump. */
  readonly days: Float64Array;
  /** P(A never) and P(I never), before the condition. */
  readonly neverA: number;
  readonly neverI: number;
  /** The probability of the condition: A never, or A before I. 0 where the sources chosen rule it out. */
  readonly possible: number;
  readonly datedA: boolean;
  readonly datedI: boolean;
  at(day: number, out: Row): void;
}

/**
 * A and I of one reflex, tabulated at the days where a density changes. Between two of them F is linear
 * and M, the probability of A and I both by a day with I not after A, is quadratic.
 */
export class Prior implements PairPrior {
  readonly days: Float64Array;
  readonly neverA: number;
  readonly neverI: number;
  readonly possible: number;
  readonly datedA: boolean;
  readonly datedI: boolean;
  readonly #a: Float64Array;
  readonly #i: Float64Array;
  readonly #m: Float64Array;

  constructor(appears: EventPrior, integrates: EventPrior) {
    this.datedA = appears.dated;
    this.datedI = integrates.dated;
    const edges = new Set<number>([FIRST_DAY, LAST_DAY]);
    for (const { from, to } of [...appears.pieces, ...integrates.pieces])
      if (from !== Infinity) edges.add(from).add(to);
    this.days = Float64Array.from(edges).sort();
    this.#a = cumulated(appears.pieces, this.days);
    this.#i = cumulated(integrates.pieces, this.days);
    this.#m = new Float64Array(this.days.length);
    this.#m[0] = this.#a[0]! * this.#i[0]!;
    for (let k = 1; k < this.days.length; k++)
      this.#m[k] =
        this.#m[k - 1]! + ((this.#a[k]! - this.#a[k - 1]!) * (this.#i[k]! + this.#i[k - 1]!)) / 2;
    const last = this.days.length - 1;
    this.neverA = 1 - this.#a[last]!;
    this.neverI = 1 - this.#i[last]!;
    this.possible = this.neverA + this.#a[last]! - this.#m[last]!;
  }

  at(day: number, out: Row): void {
    const { days } = this;
    const last = days.length - 1;
    if (day < days[0]!) return clear(out);
    if (day >= days[last]!) {
      out.a = this.#a[last]!;
      out.i = this.#i[last]!;
      out.m = this.#m[last]!;
      out.fa = out.fi = 0;
      return;
    }
    let low = 0;
    let high = last;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (days[middle]! <= day) low = middle;
      else high = middle;
    }
    const per = 1 / (days[high]! - days[low]!);
    const [a0, i0] = [this.#a[low]!, this.#i[low]!];
    out.fa = (this.#a[high]! - a0) * per;
    out.fi = (this.#i[high]! - i0) * per;
    out.a = a0 + out.fa * (day - days[low]!);
    out.i = i0 + out.fi * (day - days[low]!);
    out.m = this.#m[low]! + ((out.a - a0) * (out.i + i0)) / 2;
  }
}

const clear = (out: Row): void => void (out.a = out.i = out.m = out.fa = out.fi = 0);

/** The distribution function of a mixture at each of some days. */
function cumulated(pieces: readonly Piece[], days: Float64Array): Float64Array {
  const sums = new Float64Array(days.length);
  for (const { from, to, weight } of pieces) {
    if (from === Infinity) continue;
    for (let k = 0; k < days.length; k++) {
      const day = days[k]!;
      if (day >= to) sums[k]! += weight;
      else if (day > from) sums[k]! += (weight * (day - from)) / (to - from);
    }
  }
  return sums;
}

/** Each event of a reflex from the windows judged by. @param odd 0 to leave out what differs from all */
export const eventsOf = (
  windows: readonly Window[],
  odd = ODD,
): { appears: EventPrior; integrates: EventPrior } => ({
  appears: eventPrior(windows, appearsSaid, odd),
  integrates: eventPrior(windows, integratesSaid, odd),
});

/** The prior of a reflex from the windows judged by. @param odd as above */
export function priorOf(windows: readonly Window[], odd = ODD): Prior {
  const { appears, integrates } = eventsOf(windows, odd);
  return new Prior(appears, integrates);
}
