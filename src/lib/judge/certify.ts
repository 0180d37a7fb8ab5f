/**
 * Proof that a verdict holds at every age between two ages, from what is known at the two alone.
 *
 * With doubt in the age, the probability that the age lies before an edge of a window falls steadily
 * as the age grows. A difference of two shares is a sum of such falling curves, each times the jump it
 * makes at its edge, so over a span every term lies between its values at the two ends: the sum of the
 * lesser ones is a bound from below. It is never looser than one from the steepest slope, |f'| <= sum
 * of |jumps| / (sd sqrt(2 pi)), times the span.
 */
import type { Compiled } from './expectation.ts';
import { below, FAR } from './normal.ts';
import { ROW } from './phases.ts';
import { SPEAKS_AT_LEAST } from './thresholds.ts';
import { asksOf, rowShare, type VerdictWord } from './verdict.ts';

/**
 * How much earlier and later verdicts must differ from the winning one. A verdict gives way to one that
 * asks for more within 1e-12 of it (verdict.ts); rounding of a sum stays far below half of that.
 */
const MAY_TRAIL = 0.5e-12;
const MUST_LEAD = 2e-12;

/** A margin round the threshold of speaking, for rounding. */
const NEAR_THRESHOLD = 1e-9;

/** For every edge of every window, how likely the age lies before it: windows x 6. */
export type Masses = Float64Array;

export function massesAt({ edges }: Compiled, ageDays: number, sdDays: number): Masses {
  return edges.map((edge) => {
    const z = (edge - ageDays) / sdDays;
    return z <= -FAR ? 0 : z >= FAR ? 1 : below(z);
  });
}

/** What a phase adds to the share of one verdict less that of another: by phase, silent first. */
function weightsOf(elicited: boolean, winner: VerdictWord, other: VerdictWord): number[] {
  const unit = (phase: number): Float64Array => new Float64Array(ROW).fill(1, phase, phase + 1);
  return Array.from(
    { length: ROW },
    (_, phase) =>
      rowShare(unit(phase), 0, elicited, winner) - rowShare(unit(phase), 0, elicited, other),
  );
}

/** Bounds on one window's speech over a span, 0 to 1: it speaks from its first edge to its last. */
function speechOf(window: number, younger: Masses, older: Masses): { low: number; high: number } {
  const [first, last] = [window * ROW, window * ROW + ROW - 1];
  return { low: older[last]! - younger[first]!, high: younger[last]! - older[first]! };
}

export class Certificate {
  readonly #compiled: Compiled;
  readonly #elicited: boolean;
  /** The windows of each source: where there are several, they share one voice. */
  readonly #sources: readonly (readonly number[])[];

  constructor(compiled: Compiled, elicited: boolean) {
    this.#compiled = compiled;
    this.#elicited = elicited;
    const together = new Set(compiled.shared.flat());
    const alone = compiled.windows.flatMap((_, i) => (together.has(i) ? [] : [[i]]));
    this.#sources = [...alone, ...compiled.shared];
  }

  /** Whether a verdict (or none, since every source is silent) surely holds between two ages. */
  holds(verdict: VerdictWord | 'not-judged', younger: Masses, older: Masses): boolean {
    const windows = this.#compiled.windows.map((_, i) => speechOf(i, younger, older));
    if (verdict === 'not-judged')
      return windows.every(({ high }) => high < SPEAKS_AT_LEAST - NEAR_THRESHOLD);
    if (!windows.some(({ low }) => low > SPEAKS_AT_LEAST + NEAR_THRESHOLD)) return false;
    const order = asksOf(this.#elicited);
    const place = order.indexOf(verdict);
    return order.every((other, i) => {
      if (i === place) return true;
      const lead = this.#leadAtLeast(verdict, other, younger, older);
      return i < place ? lead >= -MAY_TRAIL : lead >= MUST_LEAD;
    });
  }

  /** A bound from below, over a span, on the sum of shares of one verdict less that of another. */
  #leadAtLeast(winner: VerdictWord, other: VerdictWord, younger: Masses, older: Masses): number {
    const weights = weightsOf(this.#elicited, winner, other);
    let lead = 0;
    for (const windows of this.#sources) {
      let least = 0;
      for (const window of windows) least += this.#windowAtLeast(weights, window, younger, older);
      lead += windows.length === 1 ? least : least * voice(windows, least < 0, younger, older);
    }
    return lead;
  }

  /** The same for one window. Edges on one day make one jump. */
  #windowAtLeast(weights: number[], window: number, younger: Masses, older: Masses): number {
    const { edges } = this.#compiled;
    let least = 0;
    let jump = 0;
    for (let k = 0; k < ROW; k++) {
      const at = window * ROW + k;
      jump += weights[k]! - (weights[k + 1] ?? 0);
      if (k + 1 < ROW && edges[at + 1] === edges[at]) continue;
      least += jump * (jump > 0 ? older[at]! : younger[at]!);
      jump = 0;
    }
    return least;
  }
}

/** The most (or least) that rows of one source weigh over a span: together one voice at most. */
function voice(windows: readonly number[], most: boolean, younger: Masses, older: Masses): number {
  let spoken = 0;
  for (const window of windows) {
    const { low, high } = speechOf(window, younger, older);
    spoken += most ? Math.max(0, low) : high;
  }
  return 1 / Math.max(1, spoken);
}
