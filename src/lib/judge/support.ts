/** For an order of things: which sources' windows support it, contradict it, or overlap. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Station } from '../atlas/types.ts';
import { fromMonths } from '../age/axis.ts';
import { reflexesAt } from './sequence.ts';
import { windowsOf } from './window.ts';

export type Support = 'supports' | 'overlaps' | 'contradicts';

/** When one source has a station happen, in axis days. */
export interface Dated {
  source: string;
  reflex: string;
  from: number;
  to: number;
}

/** Every source's date for a station; a milestone has its published window. */
export function datesOf(station: Station, atlas: Atlas): Dated[] {
  if (station.event === 'reached') {
    const m = atlas.milestones.get(station.milestone);
    if (!m?.window) return []; // "most by 6 months" dates no beginning
    const [from, to] = [fromMonths(m.window.p1Months), fromMonths(m.window.p99Months)];
    return [{ source: m.source, reflex: m.id, from, to }];
  }
  return reflexesAt(station, atlas).flatMap((reflex) =>
    windowsOf(atlas.claims.get(reflex) ?? []).flatMap((w): Dated[] => {
      const source = w.claim.source.id;
      if (station.event === 'integrates')
        return w.integrates?.to == null
          ? []
          : [{ source, reflex, from: w.integrates.from, to: w.integrates.to }];
      if (w.appears) return [{ source, reflex, from: w.appears.from, to: w.appears.to }];
      return w.byTerm ? [{ source, reflex, from: w.appearsFrom, to: w.appearsTo }] : [];
    }),
  );
}

/** Two windows: the first closes before the second opens, the other way round, or neither. */
export const supportOf = (a: Dated, b: Dated): Support =>
  a.to <= b.from ? 'supports' : b.to <= a.from ? 'contradicts' : 'overlaps';

export interface PairSupport {
  before: Dated;
  after: Dated;
  support: Support;
  /** Whether one source dates both. */
  oneSource: boolean;
}

/** All pairs of sources for one step of an order. */
export function supportFor(before: Station, after: Station, atlas: Atlas): PairSupport[] {
  const later = datesOf(after, atlas);
  return datesOf(before, atlas).flatMap((a) =>
    later.map((b) => ({
      before: a,
      after: b,
      support: supportOf(a, b),
      oneSource: a.source === b.source,
    })),
  );
}

/** How many pairs support, overlap and contradict. */
export function tally(pairs: readonly PairSupport[]): Record<Support, number> {
  const counts: Record<Support, number> = { supports: 0, overlaps: 0, contradicts: 0 };
  for (const { support } of pairs) counts[support]++;
  return counts;
}
