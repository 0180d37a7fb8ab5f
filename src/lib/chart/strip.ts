/**
 * The sequences under the lanes: stations in their order, each on its own window, joined by one thin path
 * that runs right and down. A child's intervals stand below the windows, joined in the same order: where
 * something came out of turn their path runs back and crosses the first. Over a window, how likely it came
 * in each week, as inferred in the child.
 */
import type { Measure } from './labels.ts';
import type { Density, OpenInterval, StationData, Stretch, StripData } from './model.ts';
import { bumped } from './outline.ts';
import type { AxisScale } from './scale.ts';
import type { Sizes } from './sizes.ts';
import type { ChartWords } from './words.ts';

export interface Bracket {
  x0: number;
  x1: number;
  /** An end that is not known fades out. */
  openLeft: boolean;
  openRight: boolean;
}

export interface PlacedStation {
  data: StationData;
  /** The line on which the window lies, from the top of the strip. */
  y: number;
  /** All sources, and the middle source. Undefined when none dates it. */
  window?: readonly [number, number];
  usual?: readonly [number, number];
  /** The thumbnail: its left, top and size; undefined where its window is out of sight. */
  thumb?: { x: number; y: number; size: number };
  label?: { x: number; y: number; text: string; anchor: 'start' | 'end' };
  bracket?: Bracket;
  /** How likely it came in each week: an area on the line of the window. */
  density?: string;
}

export interface PlacedSequence {
  data: StripData;
  title: string;
  /** Baseline of the title, and of what is said of the order. */
  titleY: number;
  stations: readonly PlacedStation[];
  /** Joins the windows, and the child's intervals, in the order of the stations. */
  path: string;
  childPath: string;
}

export interface PlacedStrip {
  sequences: readonly PlacedSequence[];
  height: number;
}

/** The least a window is drawn wide. */
const LEAST_PX = 3;
const FADE_PX = 16;

const clip = (stretch: Stretch, scale: AxisScale): readonly [number, number] | undefined => {
  const from = Math.max(scale.x(stretch.from), scale.leftPx);
  const to = Math.min(scale.x(stretch.to), scale.rightPx);
  if (to <= scale.leftPx || from >= scale.rightPx) return undefined;
  return to - from < LEAST_PX ? [from - LEAST_PX / 2, from + LEAST_PX / 2] : [from, to];
};

/** A child's interval as a bracket, an open end fading over a few pixels. */
export function bracketOf(interval: OpenInterval, scale: AxisScale): Bracket | undefined {
  const { after, by } = interval;
  if (after === null && by === null) return undefined;
  const x1 = by === null ? scale.x(after ?? 0) + FADE_PX : scale.x(by);
  const x0 = after === null ? scale.x(by ?? 0) - FADE_PX : scale.x(after);
  if (x1 < scale.leftPx || x0 > scale.rightPx) return undefined;
  return { x0, x1, openLeft: after === null, openRight: by === null };
}

/** Below this share of the likeliest week nothing is drawn. */
const FAINT = 0.01;

/** The area of a density, its highest week `heightPx` above the line at `y`. */
export function densityPath(
  { from, stepDays, heights }: Density,
  y: number,
  heightPx: number,
  scale: AxisScale,
): string {
  const first = heights.findIndex((height) => height >= FAINT);
  const last = heights.findLastIndex((height) => height >= FAINT);
  if (first < 0) return '';
  const points = heights.slice(Math.max(0, first - 1), last + 2).map((height, index) => ({
    x: scale.x(from + (Math.max(0, first - 1) + index + 0.5) * stepDays),
    height,
  }));
  const at = (value: number): string => value.toFixed(1);
  const top = points.map(({ x, height }) => `L${at(x)} ${at(y - height * heightPx)}`).join('');
  return `M${at(points[0]!.x)} ${at(y)}${top}L${at(points.at(-1)!.x)} ${at(y)}Z`;
}

function placeStation(
  data: StationData,
  y: number,
  scale: AxisScale,
  sizes: Sizes,
  words: ChartWords,
  measure: Measure,
): PlacedStation {
  const { text } = sizes;
  const window = data.window ? clip(data.window, scale) : undefined;
  const usual = data.usual ? clip(data.usual, scale) : undefined;
  const bracket = data.interval ? bracketOf(data.interval, scale) : undefined;
  const density = data.density
    ? densityPath(data.density, y, (sizes.station - 14 * text) * 0.62, scale)
    : '';
  const placed: PlacedStation = {
    data,
    y,
    ...(window ? { window } : {}),
    ...(usual ? { usual } : {}),
    ...(bracket ? { bracket } : {}),
    ...(density ? { density } : {}),
  };
  if (!usual) return placed;
  const size = sizes.station - 8 * text;
  const gap = 4 * text;
  const lettering = { sizePx: sizes.name };
  const wording = words.station(data.station);
  const room = size + gap + measure(wording, lettering);
  const top = y - size - 2 * text;
  const baseline = y - 6 * text;
  // figure and name stand behind the window, where the path does not run; before it at the edge
  if (usual[1] + gap + room <= sizes.width) {
    placed.thumb = { x: usual[1] + gap, y: top, size };
    placed.label = { x: usual[1] + 2 * gap + size, y: baseline, text: wording, anchor: 'start' };
  } else if (usual[0] - gap - room >= scale.leftPx) {
    placed.thumb = { x: usual[0] - gap - size, y: top, size };
    placed.label = { x: usual[0] - 2 * gap - size, y: baseline, text: wording, anchor: 'end' };
  } else if (sizes.width - room >= scale.leftPx) {
    // no room on either side: over the window, as far to its end as the edge allows
    placed.thumb = { x: sizes.width - room, y: top, size };
    placed.label = {
      x: sizes.width - room + gap + size,
      y: baseline,
      text: wording,
      anchor: 'start',
    };
  }
  return placed;
}

const middleOf = ([from, to]: readonly [number, number]): number => (from + to) / 2;

/** One smooth path through the middles; it runs back where a later station was reached earlier. */
const pathThrough = (points: readonly (readonly [number, number])[]): string =>
  points.length > 1 ? bumped(points, 2) : '';

export function placeStrip(
  strips: readonly StripData[],
  scale: AxisScale,
  sizes: Sizes,
  words: ChartWords,
  measure: Measure,
): PlacedStrip {
  const { text, station } = sizes;
  let y = sizes.narrow ? 0 : 2 * text;
  const sequences = strips.map((data): PlacedSequence => {
    if (sizes.narrow) y += 16 * text;
    const titleY = sizes.narrow ? y - 3 * text : y + station * 0.62;
    const stations = data.stations.map((one) => {
      y += station;
      return placeStation(one, y - 6 * text, scale, sizes, words, measure);
    });
    y += 3 * text;
    const below = 5 * text;
    return {
      data,
      title: words.sequence(data.id),
      titleY,
      stations,
      path: pathThrough(
        stations.flatMap((s) => (s.usual ? [[middleOf(s.usual), s.y] as const] : [])),
      ),
      childPath: pathThrough(
        stations.flatMap((s) =>
          s.bracket ? [[middleOf([s.bracket.x0, s.bracket.x1]), s.y + below] as const] : [],
        ),
      ),
    };
  });
  return { sequences, height: y };
}
