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
  goes: [number, number] | null;
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
      return {
        source: source.id,
        comes: atBirth ? [-Infinity, 280] : appears ? days(appears) : null,
        goes: integrates
          ? integratesStatus === 'later-than'
            ? [days({ ...integrates, high: integrates.low })[0], Infinity]
            : days(integrates)
          : null,
        stays: integratesStatus === 'persists',
      };
    });

export type Said = 'not-yet' | 'emerging' | 'established' | 'integrating' | 'integrated';

/** What one row says of a day; undefined: nothing. The rules for what is left unsaid are those of the README. */
function saidBy(row: Row, day: number, all: readonly Row[]): Said | undefined {
  const comesBy = all.flatMap((r) => (r.comes ? [r.comes[1]] : []));
  const lastCome = comesBy.length > 0 ? Math.max(...comesBy) : 280;
  const firstGo = Math.min(
    Infinity,
    ...all.flatMap((r) => (r.goes && r.goes[1] < Infinity ? [r.goes[0]] : [])),
  );
  const [from, to] = row.comes ?? [-Infinity, lastCome];
  if (day < to) return from === -Infinity ? undefined : day < from ? 'not-yet' : 'emerging';
  if (row.goes && row.goes[1] < Infinity)
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
