/** Every length of the chart in pixels, from the room there is and the size of the text. */
import type { Lettering, Measure } from './labels.ts';
import type { ChartData, Shown } from './model.ts';

/** Room for the chart, px. Without a height it is as high as it needs to be. */
export interface Room {
  widthPx: number;
  heightPx?: number;
  /** Names stand beside their ridges however wide the letters run, as in a hall. */
  beside?: boolean;
}

export interface Sizes {
  width: number;
  /** The scale of the text: 1 on a desk, 2 in a hall. */
  text: number;
  /** Names stand above their ridges. */
  narrow: boolean;
  /** The plot's edges from the left of the chart. */
  left: number;
  right: number;
  small: number;
  name: number;
  title: number;
  /** Widths of lines: fine, usual and the one heavy line of term. */
  fine: number;
  line: number;
  heavy: number;
  /** Above the first lane. */
  top: number;
  /** The scale of the marks: that of the text, less where lanes are too low for it. */
  mark: number;
  /** From one lane to the next. */
  pitch: number;
  ridge: number;
  /** Below the baseline, within the pitch. */
  under: number;
  /** Room for a name above its ridge; 0 where names stand beside. */
  nameAbove: number;
  /** A row of an opened lane. */
  row: number;
  heading: number;
  milestone: number;
  /** The axis' block: the age marker's label, captions, figures. */
  axis: number;
  /** The block of the age in the other clocks. */
  foot: number;
  /** From one station of a sequence to the next. */
  station: number;
  /** From one band of a best-fitting age to the next. */
  fit: number;
}

/** Text sizes at scale 1, px. */
const SMALL = 12;
const NAME = 13.5;
const TITLE = 15;

/** Below this many times the text's size a name has no room beside its ridge. */
const NARROW_BELOW = 620;

/** A lane this high has room for a mark at its full size, px. */
const FULL_MARK_PX = 25;

const LEAST_PITCH = 18;
const USUAL_PITCH = 31;
const MOST_PITCH = 40;
const MOST_RIDGE = 34;
/** In a hall few lanes fill the picture. */
const MOST_IN_HALL = 110;

/** What stands left of the plot: names in the plain lettering, titles of sequences in theirs. */
export interface Beside {
  names: readonly string[];
  titles: readonly string[];
}

/** The widest name decides how far in the plot begins. */
function gutterOf({ names, titles }: Beside, text: number, measure: Measure): number {
  const title: Lettering = { sizePx: TITLE * text, weight: 600, serif: true };
  const widest = Math.max(
    0,
    ...names.map((name) => measure(name, { sizePx: NAME * text, weight: 450 })),
    ...titles.map((name) => measure(name, title)),
  );
  return Math.ceil(widest + 16 * text);
}

/** How many lanes' heights fit into the height that is left. */
function pitchFor(leftPx: number, lanes: number, text: number, most: number): number {
  const pitch = lanes > 0 ? leftPx / lanes : USUAL_PITCH * text;
  return Math.min(Math.max(pitch, LEAST_PITCH * Math.min(text, 1)), most * text);
}

/**
 * The lengths for a room. With a height given the lanes share what is left of it, down to the least
 * height a ridge can be read at; the chart may then be higher than the room.
 */
export function sizesFor(
  data: ChartData,
  shown: Shown,
  room: Room,
  text: number,
  names: Beside,
  measure: Measure,
): Sizes {
  const narrow = room.widthPx < NARROW_BELOW * text && !shown.dense && room.beside !== true;
  const axis = 62 * text;
  const foot = 22 * text;
  const tight = room.heightPx !== undefined && room.heightPx < 760 * text;
  const heading = (tight ? 16 : 24) * text;
  const milestone = 19 * text;
  const row = 15.5 * text;
  const strip = shown.strip && data.sequences.length > 0;
  const stations = strip ? data.sequences.reduce((n, s) => n + s.stations.length, 0) : 0;
  const station = (tight ? 32 : 40) * text;
  // where names stand above their ridges, so do the words above these bands
  const fit = (narrow ? 30 : 17) * text;
  const fits = shown.dense ? 0 : (data.child?.fits?.length ?? 0);
  const nameAbove = narrow ? 17 * text : 0;
  let pitch = shown.dense ? 20 * text : USUAL_PITCH * text;
  if (room.heightPx !== undefined) {
    const groups = shown.grouped ? new Set(data.lanes.map((l) => l.group)).size : 0;
    const rest = shown.milestones ? data.milestones.length * milestone + heading * 1.5 : 0;
    const opened = shown.dense ? [] : data.lanes.filter((lane) => shown.opened.has(lane.id));
    const rows = opened.reduce((n, lane) => n + lane.bands.length + 0.8, 0) * row;
    const taken =
      axis + foot + groups * heading + rest + rows + stations * station + fits * fit + 14 * text;
    pitch = pitchFor(
      room.heightPx - taken - data.lanes.length * nameAbove,
      data.lanes.length,
      text,
      room.beside ? MOST_IN_HALL : MOST_PITCH,
    );
  }
  const under = shown.dense ? 1 : 4 * text;
  return {
    width: room.widthPx,
    text,
    narrow,
    left: narrow ? 14 * text : gutterOf(names, text, measure),
    right: room.widthPx - 14 * text,
    small: SMALL * text,
    name: Math.min(NAME * text, pitch * 0.72),
    title: TITLE * text,
    fine: Math.max(1, 0.8 * text),
    line: 1.3 * Math.max(1, 0.85 * text),
    heavy: 1.7 * Math.max(1, 0.85 * text),
    top: shown.dense ? 0 : 5 * text,
    mark: shown.dense ? Math.min(text, (pitch - 2) / FULL_MARK_PX) : text,
    pitch,
    ridge: shown.dense
      ? pitch - 2
      : Math.min(pitch - under, (room.beside ? MOST_IN_HALL : MOST_RIDGE) * text),
    under,
    nameAbove,
    row,
    heading,
    milestone,
    axis,
    foot,
    station,
    fit,
  };
}
