/**
 * How far each source leads one to expect a response at an age, and in which phase it has the age.
 * Under one source the expectation rises linearly over the appears window, is 1 between, falls
 * linearly over the integrates window and is 0 after. Where the age is in doubt, that shape is
 * convolved with the normal distribution of the age, in closed form.
 */
import { below, density, FAR } from './normal.ts';
import { ROW } from './phases.ts';
import { FIRM_SHARE, SPEAKS_AT_LEAST } from './thresholds.ts';
import type { Window } from './window.ts';

/**
 * Windows laid out as numbers, for reading at many ages. A window has six edges in order: silence
 * ends, appears from, appears to, integrates from, integrates to, silence begins. The four in the
 * middle are held within the span on which the source speaks.
 */
export interface Compiled {
  windows: readonly Window[];
  edges: Float64Array;
  /** Expectation between the edges, as level + slope x age: for the rising and the falling piece. */
  rise: Float64Array;
  fall: Float64Array;
  /** Windows that share their voice with another (rows of one source, or copies of one): runs of indices. */
  shared: readonly (readonly number[])[];
}

/** Numbers for every window at one age. */
interface Rows {
  /** windows x 6: silent, then the five phases. Each row sums to 1. */
  phases: Float64Array;
  /** Per window: the mean expectation over the ages at which it speaks, times how likely it speaks. */
  expected: Float64Array;
  /** Per window: its weight in a sum over sources, so that each family of copies has one voice at most. */
  voice: Float64Array;
}

/** What the sources say at one age. The rows are worked out when they are first asked for. */
export class Reading {
  readonly compiled: Compiled;
  readonly ageDays: number;
  readonly sdDays: number;
  #rows: Rows | undefined;

  constructor(compiled: Compiled, ageDays: number, sdDays: number) {
    this.compiled = compiled;
    this.ageDays = ageDays;
    this.sdDays = sdDays;
  }

  get #filled(): Rows {
    if (!this.#rows) {
      this.#rows = rowsFor(this.compiled.windows.length);
      fillRows(this, this.#rows);
    }
    return this.#rows;
  }

  /** windows x 6: silent, then the five phases. Each row sums to 1. */
  get phases(): Float64Array {
    return this.#filled.phases;
  }

  /** Per window: the mean expectation over the ages at which it speaks, times how likely it speaks. */
  get expected(): Float64Array {
    return this.#filled.expected;
  }
}

const rowsFor = (windows: number): Rows => ({
  phases: new Float64Array(windows * ROW),
  expected: new Float64Array(windows),
  voice: new Float64Array(windows),
});

const clamp = (value: number, low: number, high: number): number =>
  Math.min(Math.max(value, low), high);

export function compile(windows: readonly Window[]): Compiled {
  const edges = new Float64Array(windows.length * ROW);
  const rise = new Float64Array(windows.length * 2);
  const fall = new Float64Array(windows.length * 2);
  windows.forEach((w, i) => {
    const hold = (day: number): number => clamp(day, w.speaksFrom, w.speaksTo);
    edges.set(
      [
        w.speaksFrom,
        hold(w.appearsFrom),
        hold(w.appearsTo),
        hold(Math.max(w.integratesFrom, w.appearsTo)),
        hold(Math.max(w.integratesTo, w.appearsTo)),
        w.speaksTo,
      ],
      i * ROW,
    );
    const up = w.appearsTo - w.appearsFrom;
    if (up > 0) rise.set([(0 - w.appearsFrom) / up, 1 / up], i * 2);
    const down = w.integratesTo - w.integratesFrom;
    if (Number.isFinite(down) && down > 0) fall.set([w.integratesTo / down, -1 / down], i * 2);
  });
  const byVoice = new Map<string, number[]>();
  windows.forEach(({ claim: { family } }, i) => {
    byVoice.set(family, [...(byVoice.get(family) ?? []), i]);
  });
  const shared = [...byVoice.values()].filter((indices) => indices.length > 1);
  return { windows, edges, rise, fall, shared };
}

/** Reads every window at an exact age: on an edge the later phase has it. */
function readExact({ compiled, ageDays: age }: Reading, { phases, expected }: Rows) {
  const { edges, rise, fall, windows } = compiled;
  for (let i = 0; i < windows.length; i++) {
    const at = i * ROW;
    let phase = 0;
    if (age >= edges[at]! && age < edges[at + 5]!) {
      phase = 1;
      while (phase < 5 && age >= edges[at + phase]!) phase++;
    }
    phases[at + phase] = 1;
    if (phase === 2) expected[i] = rise[i * 2]! + rise[i * 2 + 1]! * age;
    else if (phase === 3) expected[i] = 1;
    else if (phase === 4) expected[i] = fall[i * 2]! + fall[i * 2 + 1]! * age;
  }
}

/**
 * Reads every window at an age in doubt. The mass between two edges is a difference of the normal
 * distribution; the mean of level + slope x age over it adds the difference of the densities:
 * integral of x over (a, b) = m (P(b) - P(a)) - sd (f(b) - f(a)).
 */
function readInDoubt({ compiled, ageDays: age, sdDays: sd }: Reading, { phases, expected }: Rows) {
  const { edges, rise, fall, windows } = compiled;
  const per = 1 / sd;
  for (let i = 0; i < windows.length; i++) {
    const at = i * ROW;
    let spoken = 0;
    let sum = 0;
    let z = (edges[at]! - age) * per;
    let mass = z <= -FAR ? 0 : z >= FAR ? 1 : below(z);
    let height = z <= -FAR || z >= FAR ? 0 : density(z);
    for (let k = 1; k < ROW; k++) {
      const edge = edges[at + k]!;
      let nextMass = mass;
      let nextHeight = height;
      if (edge !== edges[at + k - 1]) {
        z = (edge - age) * per;
        if (z <= -FAR) nextMass = nextHeight = 0;
        else if (z >= FAR) {
          nextMass = 1;
          nextHeight = 0;
        } else {
          nextMass = below(z);
          nextHeight = density(z);
        }
      }
      const p = nextMass - mass;
      if (p > 0) {
        phases[at + k] = p;
        spoken += p;
        if (k === 3) sum += p;
        else if (k === 2 || k === 4) {
          const piece = k === 2 ? rise : fall;
          sum += piece[i * 2]! * p + piece[i * 2 + 1]! * (age * p - sd * (nextHeight - height));
        }
      }
      mass = nextMass;
      height = nextHeight;
    }
    phases[at] = Math.max(0, 1 - spoken);
    expected[i] = Math.min(Math.max(sum, 0), spoken);
  }
}

/** Works out every window's row. The rows may be longer than needed; they are cleared first. */
function fillRows(reading: Reading, rows: Rows): void {
  const { windows, shared } = reading.compiled;
  rows.phases.fill(0, 0, windows.length * ROW);
  rows.expected.fill(0, 0, windows.length);
  rows.voice.fill(1, 0, windows.length);
  if (reading.sdDays > 0) readInDoubt(reading, rows);
  else readExact(reading, rows);
  for (const indices of shared) {
    let spoken = 0;
    for (const i of indices) spoken += 1 - rows.phases[i * ROW]!;
    for (const i of indices) rows.voice[i] = 1 / Math.max(1, spoken);
  }
}

/** What every window says at an age with a standard deviation (0: the age is exact), in days. */
export const readAt = (compiled: Compiled, ageDays: number, sdDays: number): Reading =>
  new Reading(compiled, ageDays, sdDays);

/** Sums over the sources at one age, each with one voice. */
export interface Totals {
  /** Six sums of probabilities: silent, then the phases. */
  phases: Float64Array;
  /** How much of all voices is not silent. */
  speaking: number;
  /** Mean expectation over the sources that speak; NaN when none does. */
  meanExpectation: number;
  /** Mean probability of the established phase over the sources that speak; NaN when none does. */
  meanEstablished: number;
  /** Whether any source speaks over the ages that the dating leaves likely. */
  anySpeaks: boolean;
  /**
   * Bit k is set when every source that is more than half not silent gives verdict group k nearly
   * all it says (see FIRM_GROUPS); no bit when there is no such source.
   */
  firm: number;
}

/**
 * The sets of phases that a verdict stands for, as the six numbers of a row to be added: four for
 * an elicited response (early, fits, closing, persisting), three for one not elicited (fits, may
 * still appear, missing). A response's verdict names its group.
 */
export const FIRM_GROUPS = {
  notYet: 0,
  there: 1,
  integrating: 2,
  integrated: 3,
  away: 4,
  emerging: 5,
  established: 6,
} as const;

const ALL_FIRM = (1 << 7) - 1;
const TINY = 1e-12;

/** Which groups one row gives nearly all of what it says. */
function firmGroups(phases: Float64Array, at: number, spoken: number): number {
  const enough = FIRM_SHARE * spoken - TINY;
  const notYet = phases[at + 1]!;
  const emerging = phases[at + 2]!;
  const established = phases[at + 3]!;
  const integrating = phases[at + 4]!;
  const integrated = phases[at + 5]!;
  return (
    (notYet >= enough ? 1 : 0) |
    (emerging + established >= enough ? 2 : 0) |
    (integrating >= enough ? 4 : 0) |
    (integrated >= enough ? 8 : 0) |
    (notYet + integrating + integrated >= enough ? 16 : 0) |
    (emerging >= enough ? 32 : 0) |
    (established >= enough ? 64 : 0)
  );
}

/** Rows that are written over at each call: a total keeps only its sums. */
let scratch = rowsFor(32);

export function totalsOf(reading: Reading): Totals {
  const count = reading.compiled.windows.length;
  if (scratch.expected.length < count) scratch = rowsFor(count * 2);
  fillRows(reading, scratch);
  const { phases, expected, voice } = scratch;
  const sums = new Float64Array(ROW);
  let expectation = 0;
  let anySpeaks = false;
  let anyFirm = false;
  let firm = ALL_FIRM;
  for (let i = 0; i < count; i++) {
    const weight = voice[i]!;
    const at = i * ROW;
    for (let k = 0; k < ROW; k++) sums[k]! += weight * phases[at + k]!;
    expectation += weight * expected[i]!;
    const spoken = 1 - phases[at]!;
    if (spoken >= SPEAKS_AT_LEAST) anySpeaks = true;
    if (spoken > 0.5) {
      anyFirm = true;
      firm &= firmGroups(phases, at, spoken);
    }
  }
  const speaking = sums[1]! + sums[2]! + sums[3]! + sums[4]! + sums[5]!;
  return {
    phases: sums,
    speaking,
    meanExpectation: anySpeaks ? expectation / speaking : NaN,
    meanEstablished: anySpeaks ? sums[3]! / speaking : NaN,
    anySpeaks,
    firm: anyFirm ? firm : 0,
  };
}
