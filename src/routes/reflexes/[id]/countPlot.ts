/** A plot of counts laid out: where its axis, its dots and their labels stand, in pixels. */
import { TERM } from '$lib/age/axis.ts';
import { roughMeasure, within, type Lettering } from '$lib/chart/labels.ts';
import { axisScale } from '$lib/chart/scale.ts';
import { ticksIn, type Tick, type TickWords } from '$lib/chart/ticks.ts';
import type { SourcedCount } from '$lib/atlas/atlas.ts';
import type { Counted, Dot } from './frequency.ts';

export const PLOT = { width: 300, height: 132, left: 34, top: 12, base: 102 };
const LETTERING: Lettering = { sizePx: 12 };
const RADIUS = 4;
/** Ages closer together than this many pixels are no line beside their dot. */
const LEAST_LINE = 8;

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

export interface PlacedDot {
  dot: Dot;
  x: number;
  y: number;
  /** The counted ages, where they are wide enough to be drawn. */
  ages: { from: number; to: number } | null;
  interval: { low: number; high: number } | null;
  label: { text: string; x: number; y: number; anchor: 'start' | 'end' | 'middle'; box: Box };
}

export interface CountPlot {
  ticks: readonly Tick[];
  /** The line of term and the word below it, where term is in sight. */
  term: { x: number; text: string } | null;
  dots: readonly PlacedDot[];
}

export interface PlotWords extends TickWords {
  term: string;
  label(count: SourcedCount): string;
}

/** Where a share from 0 to 1 stands. */
export const shareY = (share: number): number => PLOT.base - share * (PLOT.base - PLOT.top);

const overlap = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

/** The places for a label around its dot, the one that is best read first. */
const SPOTS = [
  { dx: 9, dy: -5, anchor: 'start' },
  { dx: 9, dy: 14, anchor: 'start' },
  { dx: -9, dy: -5, anchor: 'end' },
  { dx: -9, dy: 14, anchor: 'end' },
  { dx: 0, dy: -14, anchor: 'middle' },
  { dx: 0, dy: 22, anchor: 'middle' },
  { dx: 9, dy: -18, anchor: 'start' },
  { dx: 9, dy: 27, anchor: 'start' },
  { dx: -9, dy: -18, anchor: 'end' },
  { dx: 0, dy: -27, anchor: 'middle' },
  { dx: 0, dy: -40, anchor: 'middle' },
] as const;

/** The room for labels: they may reach above the plot, never below its axis or past its sides. */
const ROOM: Box = { left: PLOT.left, top: 0, right: PLOT.width, bottom: PLOT.base };

function boxOf(text: string, x: number, y: number, anchor: 'start' | 'end' | 'middle'): Box {
  const width = roughMeasure(text, LETTERING);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, top: y - 9, right: left + width, bottom: y + 2 };
}

/** Another label in the way cannot be read through at all. */
const LABEL_WEIGHT = 4;

/** The label of a dot at the first place that is clear, or at the clearest. */
function labelled(
  text: string,
  { x, y }: { x: number; y: number },
  marks: readonly Box[],
  labels: readonly Box[],
): PlacedDot['label'] {
  const placed = SPOTS.map(({ dx, dy, anchor }) => {
    const width = roughMeasure(text, LETTERING);
    const middle = within(x, width, ROOM.left, ROOM.right);
    const spot = { text, x: anchor === 'middle' ? middle : x + dx, y: y + dy, anchor };
    const box = boxOf(text, spot.x, spot.y, anchor);
    const area = (box.right - box.left) * (box.bottom - box.top);
    const cost =
      marks.reduce((sum, mark) => sum + overlap(box, mark), 0) +
      LABEL_WEIGHT * labels.reduce((sum, label) => sum + overlap(box, label), 0) +
      LABEL_WEIGHT * (area - overlap(box, ROOM));
    return { label: { ...spot, box }, cost };
  });
  return placed.reduce((a, b) => (b.cost < a.cost - 1e-6 ? b : a)).label;
}

/** Everything of a plot but its drawing. */
export function countPlot(counted: Counted, words: PlotWords): CountPlot {
  const scale = axisScale(counted.range, PLOT.left, PLOT.width - 4);
  const { from, to } = scale.range;
  const term = from < TERM && to > TERM ? { x: scale.x(TERM), text: words.term } : null;
  const termHalf = term ? roughMeasure(term.text, LETTERING) / 2 + 4 : 0;
  const ticks = ticksIn(scale, LETTERING, words, roughMeasure, [PLOT.left, PLOT.width]).map(
    (tick) =>
      // the word below the line of term has the room of a figure that is too near
      term && Math.abs(tick.x - term.x) < termHalf + tick.width / 2
        ? { ...tick, label: '', width: 0 }
        : tick,
  );
  const shapes = counted.dots.map((dot) => {
    const [left, right] = [scale.x(dot.from), scale.x(dot.to)];
    return {
      dot,
      x: (left + right) / 2,
      y: shareY(dot.share),
      ages: right - left > LEAST_LINE ? { from: left, to: right } : null,
      interval: dot.interval
        ? { low: shareY(dot.interval.low), high: shareY(dot.interval.high) }
        : null,
    };
  });
  const marks: Box[] = shapes.flatMap(({ x, y, ages, interval }) => [
    { left: x - RADIUS - 1, top: y - RADIUS - 1, right: x + RADIUS + 1, bottom: y + RADIUS + 1 },
    ...(ages ? [{ left: ages.from, top: y - 1, right: ages.to, bottom: y + 1 }] : []),
    ...(interval ? [{ left: x - 1, top: interval.high, right: x + 1, bottom: interval.low }] : []),
  ]);
  if (term)
    marks.push({ left: term.x - 1, top: PLOT.top - 6, right: term.x + 1, bottom: PLOT.base });
  const labels: Box[] = [];
  const dots = shapes.map((shape): PlacedDot => {
    const label = labelled(words.label(shape.dot.count), shape, marks, labels);
    labels.push(label.box);
    return { ...shape, label };
  });
  return { ticks, term, dots };
}
