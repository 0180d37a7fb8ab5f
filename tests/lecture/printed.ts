/**
 * The sources read a second time, from their printed figures alone: nothing of judge/ is used here.
 * Ages in days after the last period: term is 280, a month 365.25 / 12, a week 7.
 */
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Printed } from '../../src/lib/atlas/types.ts';

const UNIT = { mo: 365.25 / 12, wk: 7, d: 1, y: 365.25, wkPMA: 7 } as const;

/** First and last day a printed age can mean; a lone number stands for itself, to its last digit. */
function days({ low, high, unit }: Printed): [number, number] {
  const zero = unit === 'wkPMA' ? 0 : 280;
  const fuzz = low === high ? 0.5 / 10 ** (String(low).split('.')[1]?.length ?? 0) : 0;
  return [
    zero + (low - fuzz) * UNIT[unit],
    high === null ? Infinity : zero + (high + fuzz) * UNIT[unit],
  ];
}

export interface Row {
  source: string;
  /** Days between which it comes; a first of -Infinity: there by term, since when is not said. */
  comes: [number, number] | null;
  /** The last day of which it says that some infants lack it still, where it says so of its last day. */
  someLackAt: number | null;
  goes: [number, number] | null;
  /** The first day its words have it go; an earlier one is only left open by "by" or "until". */
  saysGoneFrom: number | null;
  stays: boolean;
}

/** Every claim that counts as a window on a reflex. */
export const rowsOf = (reflex: string): Row[] =>
  ATLAS.claims
    .get(reflex)!
    .filter((claim) => claim.role === 'window')
    .map(({ source, appears, appearsStatus, integrates, integratesStatus }) => {
      const atBirth =
        appearsStatus === 'implied' ||
        (appears !== undefined &&
          (appears.unit === 'd' ||
            (appears.unit !== 'wkPMA' && appears.low === 0 && appears.high === 0)));
      const printed = appears ? days(appears) : null;
      // half of the infants have it on the last day that is printed, all as long after that again
      const comes: [number, number] | null = atBirth
        ? [-Infinity, 280]
        : printed && appears?.notYetAll
          ? [printed[0], 2 * printed[1] - printed[0]]
          : printed;
      const ends = integrates
        ? integratesStatus === 'later-than'
          ? ([days({ ...integrates, high: integrates.low })[0], Infinity] as const)
          : days(integrates)
        : null;
      // "by 6 months": any day from the one on which its own words have it there, term where they give none
      const there = comes && comes[0] > -Infinity ? comes[1] : 280;
      return {
        source: source.id,
        comes,
        someLackAt: printed && appears?.notYetAll ? printed[1] : null,
        goes: ends && [integrates?.atLatest ? Math.min(there, ends[0]) : ends[0], ends[1]],
        saysGoneFrom: ends && ends[1] < Infinity ? ends[0] : null,
        stays: integratesStatus === 'persists',
      };
    });

export type Said = 'not-yet' | 'emerging' | 'established' | 'integrating' | 'integrated';

/** What one row says of a day; undefined: nothing. The rules for what is left unsaid are those of the README. */
function saidBy(row: Row, day: number, all: readonly Row[]): Said | undefined {
  const comesBy = all.flatMap((r) => (r.comes ? [r.someLackAt ?? r.comes[1]] : []));
  const lastCome = comesBy.length > 0 ? Math.max(...comesBy) : 280;
  const firstGo = Math.min(Infinity, ...all.flatMap((r) => r.saysGoneFrom ?? []));
  const [from, to] = row.comes ?? [-Infinity, lastCome];
  const ends = row.goes !== null && row.goes[1] < Infinity;
  if (row.someLackAt !== null && day > row.someLackAt && !ends && !row.stays) return undefined;
  if (day < to) return from === -Infinity ? undefined : day < from ? 'not-yet' : 'emerging';
  if (row.goes && ends)
    return day < row.goes[0] ? 'established' : day < row.goes[1] ? 'integrating' : 'integrated';
  if (row.stays) return 'established';
  return day < (row.goes ? row.goes[0] : firstGo) ? 'established' : undefined;
}

/** What every row of the chosen sources says of a reflex on a day, silence left out. */
export function said(
  reflex: string,
  day: number,
  chosen?: string,
): { source: string; says: Said }[] {
  const all = rowsOf(reflex);
  return all
    .filter((row) => chosen === undefined || row.source === chosen)
    .flatMap((row) => {
      const says = saidBy(row, day, all);
      return says ? [{ source: row.source, says }] : [];
    });
}
