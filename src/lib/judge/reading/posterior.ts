/**
 * The posterior of one course at one shift of its days. The days divide the axis into cells; wherever in a
 * pair of cells the two events lie, the days are as likely, so that the posterior is a sum over pairs of
 * cells, without sampling.
 */
import { IMAGINED } from './constants.ts';
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

/** The likelihood of the days for each pair of cells, row by row; a row and a column for each cell. */
export interface Cells {
  readonly size: number;
  readonly likelihood: Float64Array;
}

/**
 * The likelihood of all days for A in cell i and I in cell j (i up to j): i days before A, then days with
 * the response up to j, then days after I. Relative to the greatest, so that many days do not underflow.
 */
export function cellsOf(days: readonly DayLikelihood[]): Cells {
  const n = days.length;
  const size = n + 1;
  const after = new Float64Array(size);
  for (let j = n - 1; j >= 0; j--) after[j] = after[j + 1]! + Math.log(days[j]!.ifNot);
  let before = 0;
  let greatest = -Infinity;
  const likelihood = new Float64Array(size * size);
  for (let i = 0; i <= n; i++) {
    let between = before;
    for (let j = i; j <= n; j++) {
      const log = between + after[j]!;
      likelihood[i * size + j] = log;
      greatest = Math.max(greatest, log);
      if (j < n) between += Math.log(days[j]!.ifThere);
    }
    if (i < n) before += Math.log(days[i]!.ifNot);
  }
  for (let i = 0; i <= n; i++)
    for (let j = i; j <= n; j++) {
      const log = likelihood[i * size + j]!;
      likelihood[i * size + j] = greatest === -Infinity ? 0 : Math.exp(log - greatest);
    }
  return { size, likelihood };
}

/** What a prior says of the day in hand: read at once, so that one row serves all. */
const row: Row = emptyRow();

/**
 * The columns of a posterior's table, one row for each edge of a cell: what the prior says there; the mass
 * of A, and of I, in the cells before; and for the cell that begins there what A in it weighs per unit of
 * a with I in a later cell, and I per unit of i with A in an earlier one.
 */
const COLUMNS = 7;
const [A, I, M, A_BEFORE, I_BEFORE, A_LATER, I_EARLIER] = [0, 1, 2, 3, 4, 5, 6] as const;

/** The posterior at one shift. Days are those of the axis itself. */
export class Posterior {
  readonly prior: PairPrior;
  /** The days of the visits on the axis, ascending. */
  readonly days: Float64Array;
  /** The probability of the days under the prior, up to a factor that all shifts share. */
  readonly evidence: number;
  readonly #cells: Cells;
  readonly #table: Float64Array;

  constructor(prior: PairPrior, days: Float64Array, cells: Cells) {
    const n = days.length;
    this.prior = prior;
    this.days = days;
    this.#cells = cells;
    const table = new Float64Array((n + 2) * COLUMNS);
    this.#table = table;
    for (let k = 1; k < n + 2; k++) {
      prior.at(k > n ? Infinity : days[k - 1]!, row);
      table[k * COLUMNS + A] = row.a;
      table[k * COLUMNS + I] = k > n ? 1 : row.i; // never lies after the last day
      table[k * COLUMNS + M] = row.m;
    }
    this.evidence = this.#sum() + prior.neverA * cells.likelihood.at(-1)!;
  }

  /** The mass of all pairs of cells in which A happens. */
  #sum(): number {
    const { size, likelihood } = this.#cells;
    const table = this.#table;
    let total = 0;
    for (let i = 0; i < size; i++) {
      const from = i * COLUMNS;
      const to = from + COLUMNS;
      const da = table[to + A]! - table[from + A]!;
      let later = 0;
      for (let j = i + 1; j < size; j++) {
        const at = j * COLUMNS;
        const likely = likelihood[i * size + j]!;
        const mass = likely * (table[at + COLUMNS + I]! - table[at + I]!);
        later += mass;
        table[at + COLUMNS + I_BEFORE]! += da * mass;
        table[at + I_EARLIER]! += likely * da;
      }
      const apart = da * table[to + I]! - (table[to + M]! - table[from + M]!);
      const within = likelihood[i * size + i]! * Math.max(0, apart);
      table[to + I_BEFORE]! += within + table[from + I_BEFORE]!;
      table[from + A_LATER] = later;
      total += da * later + within;
      table[to + A_BEFORE] = total;
    }
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
    this.prior.at(day, row);
    const table = this.#table;
    const from = c * COLUMNS;
    const same = this.#cells.likelihood[c * this.#cells.size + c]!;
    const da = row.a - table[from + A]!;
    const dm = row.m - table[from + M]!;
    const mass =
      event === 'appears'
        ? table[from + A_BEFORE]! +
          da * table[from + A_LATER]! +
          same * (da * table[from + COLUMNS + I]! - dm)
        : table[from + I_BEFORE]! +
          (row.i - table[from + I]!) * table[from + I_EARLIER]! +
          same * (da * row.i - dm);
    return mass / this.evidence;
  }

  /** The density of the event on a day, per day. */
  density(event: EventKind, day: number): number {
    const c = this.#cellOf(day);
    this.prior.at(day, row);
    const table = this.#table;
    const from = c * COLUMNS;
    const same = this.#cells.likelihood[c * this.#cells.size + c]!;
    const mass =
      event === 'appears'
        ? row.fa * (table[from + A_LATER]! + same * (table[from + COLUMNS + I]! - row.i))
        : row.fi * (table[from + I_EARLIER]! + same * (row.a - table[from + A]!));
    return mass / this.evidence;
  }
}
