/**
 * Who has it from whom, laid out: sources below one another in order of year, and an arc at their side
 * between two that print the same ages, as thick as the ages they share. All in pixels.
 */
import { familyOf } from '../atlas/core.ts';
import { alike, likePairs, type Alike } from '../atlas/copies.ts';
import type { TakenOver } from '../atlas/families.ts';
import type { SourceData } from '../atlas/types.ts';

export interface VoiceRow {
  id: string;
  short: string;
  year: number | null;
  /** Middle of the row. */
  y: number;
  /** Whether it shares its voice with another. */
  shares: boolean;
}

export interface VoiceLine {
  pair: Alike;
  /** Why the two are one voice; undefined where they only print much alike. */
  taken: TakenOver | undefined;
  path: string;
  width: number;
}

export interface VoicesDrawn {
  rows: readonly VoiceRow[];
  lines: readonly VoiceLine[];
  /** Where the names begin; the arcs lie to the left of it. */
  arcs: number;
  height: number;
}

const ROW = 32;
/** Thickness of one shared age, and the least of any line. */
const PER_CELL = 0.8;
const THINNEST = 1;

/** Older first; those without a year last, by name. */
const byYear = (a: SourceData, b: SourceData): number =>
  (a.year ?? Infinity) - (b.year ?? Infinity) || a.short.localeCompare(b.short) || 0;

/** Half an ellipse to the left of the names; the farther apart two sources lie, the wider. */
function arc(from: number, to: number, arcs: number, rows: number): string {
  const reach = (arcs - 8) * (0.3 + (0.7 * Math.abs(to - from)) / (ROW * Math.max(1, rows - 1)));
  const [top, bottom] = [Math.min(from, to), Math.max(from, to)];
  const x = (n: number): string => n.toFixed(1);
  return `M${x(arcs)} ${x(top)}A${x(reach)} ${x((bottom - top) / 2)} 0 0 0 ${x(arcs)} ${x(bottom)}`;
}

/**
 * The drawing of all sources that share a voice or print at least three ages alike.
 * @param arcs width left for the arcs, in pixels
 */
export function voicesDrawn(
  sources: readonly SourceData[],
  taken: readonly TakenOver[],
  arcs: number,
): VoicesDrawn {
  const byId = new Map(sources.map((source) => [source.id, source]));
  const confirmed = taken.filter(({ by, from }) => byId.has(by) && byId.has(from));
  const isPair = ({ a, b }: Alike, { by, from }: TakenOver): boolean =>
    (a === by && b === from) || (a === from && b === by);
  const pairs = [
    ...confirmed.map((one) => ({
      pair: alike(byId.get(one.by)!, byId.get(one.from)!),
      taken: one,
    })),
    ...likePairs(sources)
      .filter((pair) => !confirmed.some((one) => isPair(pair, one)))
      .map((pair) => ({ pair, taken: undefined })),
  ];
  const ids = new Set(pairs.flatMap(({ pair }) => [pair.a, pair.b]));
  const shown = [...ids].map((id) => byId.get(id)!).sort(byYear);
  const families = shown.map(({ id }) => familyOf(id));
  const rows = shown.map(({ id, short, year }, i): VoiceRow => {
    const shares = families.filter((family) => family === families[i]).length > 1;
    return { id, short, year, y: ROW * (i + 0.5), shares };
  });
  const yOf = new Map(rows.map(({ id, y }) => [id, y]));
  const lines = pairs.map(({ pair, taken: one }): VoiceLine => ({
    pair,
    taken: one,
    path: arc(yOf.get(pair.a)!, yOf.get(pair.b)!, arcs, rows.length),
    width: Math.max(THINNEST, PER_CELL * pair.common.length),
  }));
  return { rows, lines, arcs, height: ROW * rows.length };
}
