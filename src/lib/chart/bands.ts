/** Each source's own window, as a shape over the lane or as a thin row of its own. */
import { line } from 'd3';
import { PHASES, type Phase } from '../judge/phases.ts';
import type { SourceBand } from './model.ts';
import { BEYOND_DAY } from './ridge.ts';

type Point = readonly [day: number, height: number];

const path = line<Point>()
  .x(([day]) => day)
  .y(([, height]) => -height)
  .digits(4);

/**
 * The corners of a window over the span on which the source speaks, from the baseline and back to
 * it. Where it falls silent the shape is cut off upright.
 */
export function bandCorners(band: SourceBand): Point[] {
  const { appearsFrom, appearsTo, integratesFrom, integratesTo, speaksFrom, speaksTo } = band;
  const end = (day: number): number => Math.min(day, BEYOND_DAY);
  const corners: Point[] = [];
  if (speaksFrom >= appearsTo) corners.push([speaksFrom, 0], [speaksFrom, 1]);
  else corners.push([appearsFrom, 0], [appearsTo, 1]);
  if (speaksTo < integratesTo) {
    const top = end(Math.min(integratesFrom, speaksTo));
    corners.push([top, 1], [end(speaksTo), 0]);
  } else corners.push([end(integratesFrom), 1], [end(integratesTo), 0]);
  return corners;
}

/** A window as a closed path: days across, 0 at the baseline, -1 at the top. */
export const bandPath = (band: SourceBand): string => `${path(bandCorners(band)) ?? ''}Z`;

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
