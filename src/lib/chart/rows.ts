/** The rows of an opened lane: each source's own window, its name and its printed figures. */
import { bandCorners, bandPath } from './bands.ts';
import { fitting, type Measure } from './labels.ts';
import type { PlacedLane, PlacedLanes } from './lanes.ts';
import type { DrawnLane } from './layout.ts';
import type { LaneData } from './model.ts';
import type { AxisScale } from './scale.ts';
import type { Sizes } from './sizes.ts';
import type { ChartWords } from './words.ts';

export interface PlacedRow {
  key: string;
  /** The row's baseline. */
  y: number;
  /** Empty where names stand above: the row's text is the name then. */
  name: string;
  /** The window: days across, 0 to -1. */
  path: string;
  /** The text beside it and its width in pixels; `over` where it lies upon the window. */
  figures: {
    x: number;
    text: string;
    anchor: 'start' | 'end';
    width: number;
    over: boolean;
  } | null;
}

/** Rows of one opened lane, from top to bottom. */
export function placeRows(
  lane: LaneData,
  place: PlacedLane,
  scale: AxisScale,
  sizes: Sizes,
  words: Pick<ChartWords, 'claim'>,
  measure: Measure,
): PlacedRow[] {
  const gap = 6 * sizes.text;
  const lettering = { sizePx: sizes.small };
  return lane.bands.map((band, index): PlacedRow => {
    const full = sizes.narrow ? band.short : band.claim ? words.claim(band.claim) : '';
    const room = scale.rightPx - scale.leftPx - 2 * gap;
    const text = fitting([full], room, lettering, measure) ?? '';
    const days = bandCorners(band).map(([day]) => day);
    const end = Math.max(scale.x(days.at(-1) ?? 0), scale.leftPx);
    const start = Math.min(scale.x(days[0] ?? 0), scale.rightPx);
    const width = measure(text, lettering);
    // beside the window where there is room, after it or before it; else upon it, at the edge
    const at =
      end + gap + width <= scale.rightPx
        ? { x: end + gap, anchor: 'start' as const, over: false }
        : start - gap - width >= scale.leftPx
          ? { x: start - gap, anchor: 'end' as const, over: false }
          : { x: scale.rightPx - gap, anchor: 'end' as const, over: true };
    return {
      key: `${band.source} ${index}`,
      y: place.rows[index] ?? place.base,
      name: sizes.narrow ? '' : band.short,
      path: bandPath(band),
      figures: text === '' ? null : { ...at, text, width },
    };
  });
}

/** The rows of every opened lane, by the lane's id. */
export const openedRows = (
  drawn: readonly DrawnLane[],
  lanes: PlacedLanes,
  scale: AxisScale,
  sizes: Sizes,
  words: Pick<ChartWords, 'claim'>,
  measure: Measure,
): ReadonlyMap<string, readonly PlacedRow[]> =>
  new Map(
    drawn.flatMap(({ id, data }) => {
      const place = lanes.lanes.get(id);
      return place?.opened
        ? [[id, placeRows(data, place, scale, sizes, words, measure)] as const]
        : [];
    }),
  );
