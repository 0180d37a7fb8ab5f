/**
 * The course of one reflex in one child, inferred: when it appeared and integrated, given the sources and
 * all days on which it was looked at. The days divide the axis into cells; wherever in a pair of cells the
 * two events lie, the days are as likely, so that the posterior is a sum over pairs of cells, without
 * sampling. Doubt in the dating shifts all days together. Days are those of the child's clock as recorded.
 */
import {
  FIRST_DAY,
  IMAGINED,
  INTERVAL,
  LAST_DAY,
  NEVER_NO_DATE,
  SHIFT_REACH,
} from './constants.ts';
import type { Shift } from './clock.ts';
import { shiftsOf } from './clock.ts';
import { emptyRow, type PairPrior, type Row } from './prior.ts';

export type EventKind = 'appears' | 'integrates';

/** How likely what was seen on a day is, if the response is there and if it is not. */
export interface DayLikelihood {
  day: number;
  ifThere: number;
  ifNot: number;
}

/** A day's answer with its error rates. @param missed the chance that what is there is not elicited */
export const seen = (
  day: number,
  there: boolean,
  missed: number,
  imagined = IMAGINED,
): DayLikelihood =>
  there
    ? { day, ifThere: 1 - missed, ifNot: imagined }
    : { day, ifThere: missed, ifNot: 1 - imagined };

/**
 * The likelihood of all days for A in cell i and I in cell j (i up to j): i days before A, then days with
 * the response up to j, then days after I. Relative to the greatest, so that many days do not underflow.
 */
function likelihoods(days: readonly DayLikelihood[]): Float64Array[] {
  const n = days.length;
  const after = new Float64Array(n + 1);
  for (let j = n - 1; j >= 0; j--) after[j] = after[j + 1]! + Math.log(days[j]!.ifNot);
  let before = 0;
  let greatest = -Infinity;
  const logs: Float64Array[] = [];
  for (let i = 0; i <= n; i++) {
    const row = new Float64Array(n + 1);
    let between = before;
    for (let j = i; j <= n; j++) {
      row[j] = between + after[j]!;
      greatest = Math.max(greatest, row[j]!);
      if (j < n) between += Math.log(days[j]!.ifThere);
    }
    logs.push(row);
    if (i < n) before += Math.log(days[i]!.ifNot);
  }
  for (const [i, row] of logs.entries())
    for (let j = i; j <= n; j++) row[j] = greatest === -Infinity ? 0 : Math.exp(row[j]! - greatest);
  return logs;
}

/** The posterior at one shift. Days are those of the axis itself. */
export class Posterior {
  readonly prior: PairPrior;
  /** The days of the visits on the axis, ascending. */
  readonly days: Float64Array;
  /** The probability of the days under the prior, up to a factor that all shifts share. */
  readonly evidence: number;
  readonly #cells: readonly Float64Array[];
  readonly #edges: Row[];
  /** Per cell: mass of A in the cells before; of A in it per unit of a, with I in a later cell. */
  readonly #aBefore: Float64Array;
  readonly #aLater: Float64Array;
  /** The same for I, with A in an earlier cell. */
  readonly #iBefore: Float64Array;
  readonly #iEarlier: Float64Array;
  readonly #row = emptyRow();

  constructor(prior: PairPrior, days: Float64Array, cells: readonly Float64Array[]) {
    const n = days.length;
    this.prior = prior;
    this.days = days;
    this.#cells = cells;
    this.#edges = Array.from({ length: n + 2 }, emptyRow);
    for (let k = 0; k < n; k++) prior.at(days[k]!, this.#edges[k + 1]!);
    prior.at(Infinity, this.#edges[n + 1]!);
    this.#edges[n + 1]!.i = 1; // never lies after the last day
    this.#aBefore = new Float64Array(n + 2);
    this.#iBefore = new Float64Array(n + 2);
    this.#aLater = new Float64Array(n + 1);
    this.#iEarlier = new Float64Array(n + 1);
    this.evidence = this.#sum() + prior.neverA * cells[n]![n]!;
  }

  /** The mass of all pairs of cells in which A happens. */
  #sum(): number {
    const n = this.days.length;
    const columns = new Float64Array(n + 1);
    let total = 0;
    for (let i = 0; i <= n; i++) {
      const [from, to] = [this.#edges[i]!, this.#edges[i + 1]!];
      const da = to.a - from.a;
      let later = 0;
      for (let j = i + 1; j <= n; j++) {
        const mass = this.#cells[i]![j]! * (this.#edges[j + 1]!.i - this.#edges[j]!.i);
        later += mass;
        columns[j]! += da * mass;
        this.#iEarlier[j]! += this.#cells[i]![j]! * da;
      }
      const within = this.#cells[i]![i]! * Math.max(0, da * to.i - (to.m - from.m));
      columns[i]! += within;
      this.#aLater[i] = later;
      total += da * later + within;
      this.#aBefore[i + 1] = total;
    }
    for (let j = 0; j <= n; j++) this.#iBefore[j + 1] = this.#iBefore[j]! + columns[j]!;
    return total;
  }

  #cellOf(day: number): number {
    let cell = 0;
    while (cell < this.days.length && this.days[cell]! <= day) cell++;
    return cell;
  }

  /** P(the event by a day). Never has happened by no day. */
  by(event: EventKind, day: number): number {
    const c = this.#cellOf(day);
    const row = this.#row;
    this.prior.at(day, row);
    const from = this.#edges[c]!;
    const same = this.#cells[c]![c]!;
    const da = row.a - from.a;
    const dm = row.m - from.m;
    const mass =
      event === 'appears'
        ? this.#aBefore[c]! + da * this.#aLater[c]! + same * (da * this.#edges[c + 1]!.i - dm)
        : this.#iBefore[c]! + (row.i - from.i) * this.#iEarlier[c]! + same * (da * row.i - dm);
    return mass / this.evidence;
  }

  /** The density of the event on a day, per day. */
  density(event: EventKind, day: number): number {
    const c = this.#cellOf(day);
    const row = this.#row;
    this.prior.at(day, row);
    const same = this.#cells[c]![c]!;
    const mass =
      event === 'appears'
        ? row.fa * (this.#aLater[c]! + same * (this.#edges[c + 1]!.i - row.i))
        : row.fi * (this.#iEarlier[c]! + same * (row.a - this.#edges[c]!.a));
    return mass / this.evidence;
  }
}

/** A value with the interval that holds nine tenths; Infinity is never. */
export interface Dates {
  median: number;
  low: number;
  high: number;
}

export interface States {
  notYet: number;
  there: number;
  gone: number;
}

/** What is still to change in a child, and by which days; null: no such day. */
export interface Change {
  event: EventKind;
  /** P(it never changes), given the child's past. */
  never: number;
  halfBy: number | null;
  nineInTenBy: number | null;
}

const STEPS = 24;

export class Inferred {
  readonly prior: PairPrior;
  readonly sdDays: number;
  readonly likelihood: readonly DayLikelihood[];
  readonly shifts: readonly Shift[];
  readonly #cells: readonly Float64Array[];
  #posteriors: readonly Posterior[] | undefined;
  #nodes: { posterior: Posterior; weight: number; shift: number }[] | undefined;

  /** @param days in the order of time, on the child's clock @param sdDays of the shift of them all */
  constructor(prior: PairPrior, days: readonly DayLikelihood[], sdDays: number) {
    this.prior = prior;
    this.sdDays = sdDays;
    this.likelihood = days;
    this.shifts = shiftsOf(sdDays);
    this.#cells = likelihoods(days);
  }

  /** The posterior at each of `shifts`, in their order. */
  get posteriors(): readonly Posterior[] {
    this.#posteriors ??= this.shifts.map((shift) => {
      const days = Float64Array.from(this.likelihood, ({ day }) => day + shift.days);
      return new Posterior(this.prior, days, this.#cells);
    });
    return this.#posteriors;
  }

  /** The posterior at every shift, weighted by how well the shift agrees with this course's days. */
  get nodes(): readonly { posterior: Posterior; weight: number; shift: number }[] {
    if (!this.#nodes) {
      const nodes = this.shifts.map(({ days, weight }, k) => {
        const posterior = this.posteriors[k]!;
        return { posterior, weight: weight * posterior.evidence, shift: days };
      });
      const sum = nodes.reduce((total, node) => total + node.weight, 0);
      this.#nodes = nodes
        .filter(({ weight }) => weight > 0)
        .map((node) => ({ ...node, weight: node.weight / sum }));
    }
    return this.#nodes;
  }

  /** Whether the days and the sources leave nothing possible, as they can without error rates. */
  get contradicted(): boolean {
    return this.nodes.length === 0;
  }

  /** P(the event by a day of the child's clock), 0 to 1; NaN where nothing is possible. */
  by(event: EventKind, day: number): number {
    if (this.contradicted) return NaN;
    let sum = 0;
    for (const { posterior, weight, shift } of this.nodes)
      sum += weight * posterior.by(event, day + shift);
    return Math.min(1, Math.max(0, sum));
  }

  /** P(the event never happens). */
  never(event: EventKind): number {
    return 1 - this.by(event, Infinity);
  }

  states(day: number): States {
    const appeared = this.by('appears', day);
    const gone = Math.min(appeared, this.by('integrates', day));
    return { notYet: 1 - appeared, there: appeared - gone, gone };
  }

  /** The first day by which the event has happened with a probability; Infinity where never has the rest. */
  quantile(event: EventKind, probability: number): number {
    if (!(this.by(event, Infinity) >= probability)) return Infinity;
    let low = FIRST_DAY - SHIFT_REACH * this.sdDays;
    let high = LAST_DAY + SHIFT_REACH * this.sdDays;
    if (this.by(event, low) >= probability) return low;
    for (let step = 0; step < STEPS; step++) {
      const middle = (low + high) / 2;
      if (this.by(event, middle) >= probability) high = middle;
      else low = middle;
    }
    return high;
  }

  dates(event: EventKind): Dates {
    const tail = (1 - INTERVAL) / 2;
    return {
      median: this.quantile(event, 0.5),
      low: this.quantile(event, tail),
      high: this.quantile(event, 1 - tail),
    };
  }

  /** The same course if the response surely is there on a day. */
  #thereOn(day: number): Inferred {
    const sure: DayLikelihood = { day, ifThere: 1, ifNot: 0 };
    const days = [...this.likelihood, sure].sort((a, b) => a.day - b.day);
    return new Inferred(this.prior, days, this.sdDays);
  }

  /** What is awaited on a day: that it appears, or that what is there integrates; undefined once gone. */
  change(now: number): Change | undefined {
    if (this.contradicted) return undefined;
    const { notYet, there, gone } = this.states(now);
    if (gone > Math.max(notYet, there)) return undefined;
    const event: EventKind = there >= notYet ? 'integrates' : 'appears';
    const given = event === 'integrates' ? this.#thereOn(now) : this;
    if (given.contradicted) return undefined;
    const already = given.by(event, now);
    const left = 1 - already;
    const never = given.never(event) / left;
    const day = (share: number): number | null => {
      const found = given.quantile(event, already + share * left);
      return found === Infinity ? null : found;
    };
    return {
      event,
      never,
      halfBy: day(0.5),
      nineInTenBy: never >= NEVER_NO_DATE - 1e-12 ? null : day(0.9),
    };
  }
}
