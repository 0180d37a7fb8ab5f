/**
 * How far each source leads one to expect a response at an age, and in which phase it has the age.
 * Under one source the expectation rises linearly over the appears window, is 1 between, falls
 * linearly over the integrates window and is 0 after. Where the age is in doubt, that shape is
 * convolved with the normal distribution of the age, in closed form.
 */
import { below, density, FAR } from './normal.ts';
import { ROW } from './phases.ts';
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
  /** Windows that share their source with another (part was read, part recalled): runs of indices. */
  shared: readonly (readonly number[])[];
}

/** What the sources say at one age: a row of six probabilities and an expectation for each window. */
export interface Reading {
  compiled: Compiled;
  ageDays: number;
  sdDays: number;
  /** windows x 6: silent, then the five phases. Each row sums to 1. */
  phases: Float64Array;
  /** Per window: the mean expectation over the ages at which it speaks, times how likely it speaks. */
  expected: Float64Array;
  /** Per window: its weight in a sum over sources, so that each source has one voice at most. */
  voice: Float64Array;
}

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
  const bySource = new Map<string, number[]>();
  windows.forEach((w, i) => {
    const id = w.claim.source.id;
    bySource.set(id, [...(bySource.get(id) ?? []), i]);
  });
  const shared = [...bySource.values()].filter((indices) => indices.length > 1);
  return { windows, edges, rise, fall, shared };
}

/** Reads every window at an exact age: on an edge the later phase has it. */
function readExact(compiled: Compiled, age: number, phases: Float64Array, expected: Float64Array) {
  const { edges, rise, fall } = compiled;
  for (let i = 0; i < expected.length; i++) {
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
function readInDoubt(
  compiled: Compiled,
  age: number,
  sd: number,
  phases: Float64Array,
  expected: Float64Array,
) {
  const { edges, rise, fall } = compiled;
  const per = 1 / sd;
  for (let i = 0; i < expected.length; i++) {
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

/** What every window says at an age with a standard deviation (0: the age is exact), in days. */
export function readAt(compiled: Compiled, ageDays: number, sdDays: number): Reading {
  const count = compiled.windows.length;
  const phases = new Float64Array(count * ROW);
  const expected = new Float64Array(count);
  if (sdDays > 0) readInDoubt(compiled, ageDays, sdDays, phases, expected);
  else readExact(compiled, ageDays, phases, expected);
  const voice = new Float64Array(count).fill(1);
  for (const indices of compiled.shared) {
    const spoken = indices.reduce((sum, i) => sum + 1 - phases[i * ROW]!, 0);
    for (const i of indices) voice[i] = 1 / Math.max(1, spoken);
  }
  return { compiled, ageDays, sdDays, phases, expected, voice };
}

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
  /** Whether any source is more than half not silent. */
  anySpeaks: boolean;
}

export function totalsOf(reading: Reading): Totals {
  const { phases, expected, voice } = reading;
  const sums = new Float64Array(ROW);
  let expectation = 0;
  let anySpeaks = false;
  for (let i = 0; i < expected.length; i++) {
    const weight = voice[i]!;
    const at = i * ROW;
    for (let k = 0; k < ROW; k++) sums[k]! += weight * phases[at + k]!;
    expectation += weight * expected[i]!;
    if (phases[at]! < 0.5) anySpeaks = true;
  }
  const speaking = sums[1]! + sums[2]! + sums[3]! + sums[4]! + sums[5]!;
  return {
    phases: sums,
    speaking,
    meanExpectation: expectation / speaking,
    meanEstablished: sums[3]! / speaking,
    anySpeaks,
  };
}
