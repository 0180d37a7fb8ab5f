/**
 * The course of one reflex in one child, inferred: when it appeared and integrated, given the sources and
 * all days on which it was looked at. Doubt in the dating shifts all days together. Days are those of the
 * child's clock as recorded.
 */
import { FIRST_DAY, INTERVAL, LAST_DAY, NEVER_NO_DATE, SHIFT_REACH } from './constants.ts';
import type { Shift } from './clock.ts';
import { shiftsOf } from './clock.ts';
import { cellsOf, Posterior, type Cells, type DayLikelihood, type EventKind } from './posterior.ts';
import type { PairPrior } from './prior.ts';

export { seen, type DayLikelihood, type EventKind, type Posterior } from './posterior.ts';

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

/** How exactly a date is found, in days: an hour would do. */
const PRECISION = 1e-4;

export class Inferred {
  readonly prior: PairPrior;
  readonly sdDays: number;
  readonly likelihood: readonly DayLikelihood[];
  readonly shifts: readonly Shift[];
  readonly #cells: Cells;
  #posteriors: readonly Posterior[] | undefined;
  #nodes: { posterior: Posterior; weight: number; shift: number }[] | undefined;

  /** @param days in the order of time, on the child's clock @param sdDays of the shift of them all */
  constructor(prior: PairPrior, days: readonly DayLikelihood[], sdDays: number) {
    this.prior = prior;
    this.sdDays = sdDays;
    this.likelihood = days;
    this.shifts = shiftsOf(sdDays);
    this.#cells = cellsOf(days);
  }

  /** The posterior at each of `shifts`, in their order. */
  get posteriors(): readonly Posterior[] {
    this.#posteriors ??= this.shifts.map((shift) => {
      const days = new Float64Array(this.likelihood.length);
      for (const [k, { day }] of this.likelihood.entries()) days[k] = day + shift.days;
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
    const reach = SHIFT_REACH * this.sdDays;
    return this.#quantile(event, probability, FIRST_DAY - reach, LAST_DAY + reach);
  }

  /** Looked for between two days: by secants, and by halves where a secant did not halve what is left. */
  #quantile(event: EventKind, probability: number, from: number, to: number): number {
    if (!(this.by(event, Infinity) >= probability)) return Infinity;
    let [low, high] = [from, to];
    let [under, over] = [this.by(event, low) - probability, this.by(event, high) - probability];
    if (under >= 0) return low;
    let halve = false;
    while (high - low > PRECISION) {
      const width = high - low;
      const part = halve ? 0.5 : under / (under - over);
      // a little off either end, so that a secant through the date itself closes the other side in
      const at = low + Math.min(Math.max(part * width, PRECISION / 2), width - PRECISION / 2);
      const gap = this.by(event, at) - probability;
      if (gap >= 0) [high, over] = [at, gap];
      else [low, under] = [at, gap];
      halve = !halve && high - low > width / 2;
    }
    return high;
  }

  dates(event: EventKind): Dates {
    const tail = (1 - INTERVAL) / 2;
    const reach = SHIFT_REACH * this.sdDays;
    const [first, last] = [FIRST_DAY - reach, LAST_DAY + reach];
    const median = this.#quantile(event, 0.5, first, last);
    return {
      median,
      low: this.#quantile(event, tail, first, Math.min(median, last)),
      high: this.#quantile(event, 1 - tail, Number.isFinite(median) ? median : first, last),
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
