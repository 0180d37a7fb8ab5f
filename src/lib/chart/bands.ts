/** Each source's own window, as a shape over the lane or as a thin row of its own. */
import { PHASES, type Phase } from '../judge/phases.ts';
import type { SourceBand } from './model.ts';
import { straight } from './outline.ts';
import { BEYOND_DAY } from './ridge.ts';

type Point = readonly [day: number, height: number];

/** How far a window has it there on a day, 0 to 1, were it to speak of every age. */
function heightOf(band: SourceBand, day: number): number {
  const { appearsFrom, appearsTo, integratesFrom, integratesTo } = band;
  if (day < appearsFrom || day > integratesTo) return 0;
  if (day < appearsTo) return (day - appearsFrom) / (appearsTo - appearsFrom);
  if (day > integratesFrom) return (integratesTo - day) / (integratesTo - integratesFrom);
  return 1;
}

/**
 * The corners of a window over the span on which the source speaks, from the baseline and back to
 * it. Where it begins to speak or falls silent between two corners the shape is cut off upright.
 */
export function bandCorners(band: SourceBand): Point[] {
  const last = Math.min(band.integratesTo, band.speaksTo);
  const first = Math.min(Math.max(band.appearsFrom, band.speaksFrom), last);
  const turns = [band.appearsTo, band.integratesFrom].filter((day) => day > first && day < last);
  const days = [first, ...turns, last];
  const seen = days.map((day): Point => [Math.min(day, BEYOND_DAY), heightOf(band, day)]);
  const cut = (point: Point | undefined): Point[] => (point && point[1] > 0 ? [[point[0], 0]] : []);
  return [...cut(seen[0]), ...seen, ...cut(seen.at(-1))];
}

/** A window as a closed path: days across, 0 at the baseline, -1 at the top. */
export const bandPath = (band: SourceBand): string => {
  const corners = bandCorners(band).map(([day, height]) => [day, -height] as const);
  return `${straight(corners, 4)}Z`;
};

/** The phase in which a source has a day; undefined where it is silent. On an edge the later phase has it. */
export function phaseIn(band: SourceBand, day: number): Phase | undefined {
  if (day < band.speaksFrom || day >= band.speaksTo) return undefined;
  const edges = [band.appearsFrom, band.appearsTo, band.integratesFrom, band.integratesTo];
  return PHASES[edges.filter((edge) => day >= edge).length];
}

const NONE: ReadonlySet<string> = new Set();

/** How many sources in sight hold a day between the first sign and the last. */
export function holdersAt(
  bands: readonly SourceBand[],
  day: number,
  hidden: ReadonlySet<string> = NONE,
): number {
  let count = 0;
  for (const band of bands)
    if (
      !hidden.has(band.source) &&
      day >= Math.max(band.appearsFrom, band.speaksFrom) &&
      day <= band.integratesTo &&
      day < band.speaksTo
    )
      count++;
  return count;
}
