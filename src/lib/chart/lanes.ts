/** Lanes from top to bottom: their order, their groups, and how high each stands. */
import type { Group } from '../atlas/types.ts';
import type { ChartData, ChartView, LaneData, LaneOrder, Shown } from './model.ts';
import type { Sizes } from './sizes.ts';

/** Lifelong lanes come last among the integrating; among equals the order of the groups stands. */
const RULES: Readonly<Record<LaneOrder, (lane: LaneData) => number>> = {
  group: () => 0,
  appearing: (lane) => lane.appearsBy,
  integrating: (lane) => lane.integratesBy,
};

const less = (a: number, b: number): number => (a < b ? -1 : a > b ? 1 : 0);

/** The lanes' ids from top to bottom. A list of ids is taken as it is; lanes it leaves out follow. */
export function orderOf(lanes: readonly LaneData[], order: ChartView['order']): string[] {
  const ids = lanes.map((lane) => lane.id);
  if (typeof order !== 'string') {
    const known = new Set(ids);
    const named = [...new Set(order)].filter((id) => known.has(id));
    const taken = new Set(named);
    return [...named, ...ids.filter((id) => !taken.has(id))];
  }
  const rule = RULES[order];
  return [...lanes].sort((a, b) => less(rule(a), rule(b))).map((lane) => lane.id);
}

export interface PlacedLane {
  id: string;
  /** From the top of the lanes' block, px. */
  top: number;
  height: number;
  /** The hair line the ridge stands on. */
  base: number;
  ridgePx: number;
  /** Where the name's baseline is. */
  nameY: number;
  opened: boolean;
  /** How far a lane that comes or goes is to be seen, 0 to 1; whole when left out. */
  opacity?: number;
  /** Baselines of the sources' own rows, in the order of the lane's bands; empty when closed. */
  rows: readonly number[];
}

export interface Heading {
  group: Group;
  /** Baseline of its text. */
  y: number;
}

export interface PlacedLanes {
  /** By id; in the order of the data, so that a sort moves lanes without making any anew. */
  lanes: ReadonlyMap<string, PlacedLane>;
  order: readonly string[];
  headings: readonly Heading[];
  /** Places of the milestone rows' baselines, in the order of the data. */
  milestones: readonly number[];
  /** Where the milestones' own heading stands. */
  milestonesY: number;
  height: number;
}

/** Places every lane, in an order from top to bottom (see orderOf). */
export function placeLanes(
  data: ChartData,
  shown: Shown,
  order: readonly string[],
  sizes: Sizes,
): PlacedLanes {
  const byId = new Map(data.lanes.map((lane) => [lane.id, lane]));
  const placed = new Map<string, PlacedLane>();
  const headings: Heading[] = [];
  const { pitch, ridge, nameAbove, row, heading } = sizes;
  let y = sizes.top;
  let group: Group | null = null;
  for (const id of order) {
    const lane = byId.get(id);
    if (!lane) continue;
    if (shown.grouped && lane.group && lane.group !== group) {
      headings.push({ group: lane.group, y: y + heading - sizes.small * 0.35 });
      y += heading;
      group = lane.group;
    }
    const opened = !shown.dense && shown.opened.has(id);
    const sources = opened ? lane.bands.length : 0;
    const base = y + nameAbove + pitch - sizes.under;
    const rows = Array.from({ length: sources }, (_, i) => base + row * (i + 1) + row * 0.15);
    const height = nameAbove + pitch + (opened ? row * (sources + 0.8) : 0);
    placed.set(id, {
      id,
      top: y,
      height,
      base,
      ridgePx: ridge,
      nameY: nameAbove > 0 ? y + nameAbove * 0.8 : base - sizes.ridge * 0.18,
      opened,
      rows,
    });
    y += height;
  }
  const milestones: number[] = [];
  let milestonesY = y;
  if (shown.milestones && data.milestones.length > 0) {
    y += heading * 0.5;
    milestonesY = y + heading - sizes.small * 0.35;
    y += heading;
    for (let i = 0; i < data.milestones.length; i++) {
      y += sizes.milestone;
      milestones.push(y - sizes.milestone * 0.35);
    }
  }
  return {
    lanes: new Map(data.lanes.flatMap(({ id }) => [[id, placed.get(id)!] as const])),
    order,
    headings,
    milestones,
    milestonesY,
    height: y + sizes.under,
  };
}
