/** Where the sources quarrel: over how many days they have a reflex in different phases. */
import type { Compiled } from './expectation.ts';
import { ROW } from './phases.ts';
import { readAt } from './expectation.ts';

/** A stretch of ages over which what the sources say does not change. */
export interface Stretch {
  fromDay: number;
  toDay: number;
  /** How many sources have the reflex in each phase: not yet, emerging, established, integrating, integrated. */
  phases: readonly number[];
  /** How many pairs of sources that both speak say different phases, of all such pairs, 0 to 1. */
  apart: number;
}

export interface Quarrel {
  stretches: readonly Stretch[];
  /** Days over which at least two sources speak. */
  spokenDays: number;
  /** Days over which any two of them say different phases. */
  quarrelDays: number;
  /** Quarrelling days over spoken days, each weighted by the share of pairs that differ, 0 to 1. */
  share: number;
}

/** The phases of every source at an exact age, one voice a source (the first of its rows that speaks). */
function phasesAt(compiled: Compiled, day: number): number[] {
  const { phases } = readAt(compiled, day, 0);
  const said = new Map<string, number>();
  compiled.windows.forEach((window, i) => {
    const phase = phases.subarray(i * ROW, i * ROW + ROW).indexOf(1);
    const { id } = window.claim.source;
    if (phase > 0 && !said.has(id)) said.set(id, phase);
  });
  return [...said.values()];
}

/**
 * The quarrel over one reflex between two places on the axis, computed from the corners of all
 * windows (between two corners nothing changes), not from samples.
 */
export function quarrelOver(compiled: Compiled, fromDay: number, toDay: number): Quarrel {
  const corners = new Set([fromDay, toDay]);
  for (const edge of compiled.edges) if (edge > fromDay && edge < toDay) corners.add(edge);
  const sorted = [...corners].sort((a, b) => a - b);
  let spokenDays = 0;
  let quarrelDays = 0;
  let weighted = 0;
  const stretches = sorted.slice(1).map((end, i): Stretch => {
    const start = sorted[i]!;
    const said = phasesAt(compiled, (start + end) / 2);
    const counts = [1, 2, 3, 4, 5].map((phase) => said.filter((p) => p === phase).length);
    const pairs = (said.length * (said.length - 1)) / 2;
    const agreeing = counts.reduce((sum, n) => sum + (n * (n - 1)) / 2, 0);
    const apart = pairs > 0 ? 1 - agreeing / pairs : 0;
    if (pairs > 0) spokenDays += end - start;
    if (apart > 0) quarrelDays += end - start;
    weighted += apart * (end - start);
    return { fromDay: start, toDay: end, phases: counts, apart };
  });
  return { stretches, spokenDays, quarrelDays, share: spokenDays > 0 ? weighted / spokenDays : 0 };
}
