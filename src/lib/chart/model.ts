/** What the chart is given: plain values on the axis, already read from the atlas and the record. */
import type { AxisDay } from '../age/axis.ts';
import type { SourcedClaim, SourcedCount } from '../atlas/atlas.ts';
import type { Group, Side, Station } from '../atlas/types.ts';
import type { Response } from '../case/finding.ts';
import type { FitKind } from '../judge/reading/fit.ts';
import type { OrderWord } from '../judge/reading/order.ts';
import type { OpenReason } from '../judge/reading/orders.ts';
import type { OrderAsks } from '../judge/sequence.ts';

/** A stretch of the axis, `from` below or at `to`; an end may be infinite. */
export interface Stretch {
  from: AxisDay;
  to: AxisDay;
}

/** A stretch of a ridge without a corner in it: the expectation runs straight from one end to the other. */
export interface RidgePiece extends Stretch {
  /** Mean expectation at `from`, 0 to 1, of the sources that speak there. */
  rise: number;
  /** Mean expectation just before `to`. */
  fall: number;
  /** Whether every source that speaks has it established. */
  agreed: boolean;
}

/** What one source says of the lane, as six places on the axis (see judge/window.ts). */
export interface SourceBand {
  source: string;
  /** A name short enough to stand beside its row. */
  short: string;
  speaksFrom: AxisDay;
  appearsFrom: AxisDay;
  appearsTo: AxisDay;
  integratesFrom: AxisDay;
  integratesTo: AxisDay;
  speaksTo: AxisDay;
  /** A colour of its own, where sources are to be told apart by hue; else the one water colour. */
  colour?: string;
  /** The claim it was read from, for its printed figures. */
  claim?: SourcedClaim;
}

/** The outermost printed ages over the sources that date them. */
export interface LaneFigures {
  appears: Stretch | null;
  integrates: Stretch | null;
  lifelong: boolean;
}

export interface LaneData {
  id: string;
  group: Group | null;
  ridge: readonly RidgePiece[];
  bands: readonly SourceBand[];
  figures: LaneFigures;
  /** The first day the mean expectation reaches one half, and the last; infinite when lifelong. */
  appearsBy: number;
  integratesBy: number;
  /** Counts of real infants, drawn where the lane is opened. */
  counts?: readonly SourcedCount[];
}

/** A finding at the age it was seen. */
export interface MarkData {
  reflex: string;
  side: Side;
  response: Response;
  /** The name of the variant that was tested, where the finding says it. */
  variant?: string;
  day: AxisDay;
  /** Half of the 95 % spread of the age, days; 0 when the age is exact. */
  spreadDays: number;
  /** The visit's place in the record. */
  visit: number;
  /** Whether it asks for attention at the visit that is shown: then it is in the one accent, else in ink. */
  asks: boolean;
}

export interface VisitData {
  day: AxisDay;
  spreadDays: number;
  /** The date, as `YYYY-MM-DD`. */
  on: string;
}

/** Where between two visits a response came or went. */
export interface CourseData extends Stretch {
  reflex: string;
  side: Side;
  event: 'appeared' | 'integrated';
}

/** How far the age of the child is in doubt along the axis. */
export interface Spread {
  /** Half of the 95 % spread, days. */
  halfDays: number;
  /** From this day on the age is exact. */
  until: AxisDay;
}

export interface ChildData {
  visits: readonly VisitData[];
  marks: readonly MarkData[];
  courses: readonly CourseData[];
  spread: Spread | null;
  /** Lanes with findings to be discussed or watched at the visit that is shown, by reflex. */
  flags?: Readonly<Record<string, 'discuss' | 'watch'>>;
  /** The ages that the findings of one visit fit best, as far as they are shown. */
  fits?: readonly FitData[];
}

/** The age at which findings would be most ordinary; null: cut off by an end of the axis. */
export interface FitData {
  kind: FitKind;
  median: number;
  low: number | null;
  high: number | null;
}

/** The child's interval: after one visit, by another; null = that end is open. */
export interface OpenInterval {
  after: AxisDay | null;
  by: AxisDay | null;
}

export interface StationData {
  station: Station;
  reflexes: readonly string[];
  /** From the earliest to the latest printed day over the sources; null when none dates it. */
  window: Stretch | null;
  /** The middle source's window: the medians of its two ends. */
  usual: Stretch | null;
  /** Undefined without a child or when it was never looked at. */
  interval?: OpenInterval;
  /** When it came, as inferred in this child: the density at even steps of the axis, its greatest 1. */
  density?: Density;
}

/** A density over the axis, at even steps. */
export interface Density {
  from: AxisDay;
  stepDays: number;
  heights: readonly number[];
}

/** What is said of a sequence in a child. */
export interface OrderSaid {
  order: OrderWord;
  reason: OpenReason | null;
  asks: OrderAsks;
}

export interface StripData {
  id: string;
  stations: readonly StationData[];
  /** Undefined without a child. */
  said?: OrderSaid;
  /** What each step from one station to the next asks for. */
  stepAsks?: readonly OrderAsks[];
}

export interface MilestoneData extends Stretch {
  id: string;
  interval?: OpenInterval;
}

export interface ChartData {
  /** In the order of their groups. */
  lanes: readonly LaneData[];
  child?: ChildData;
  sequences: readonly StripData[];
  milestones: readonly MilestoneData[];
}

export const LANE_ORDERS = ['group', 'appearing', 'integrating'] as const;
export type LaneOrder = (typeof LANE_ORDERS)[number];

/** What is looked at: everything a reader of the chart can change. */
export interface ChartView {
  /** The part of the axis in sight. */
  range: Stretch;
  /** Where the age line stands. */
  age: AxisDay;
  /** An order by rule, or the lanes' ids from top to bottom. */
  order: LaneOrder | readonly string[];
  /** Ids of the lanes that show each source. */
  opened: ReadonlySet<string>;
  /** Every lane opened, its sources laid over each other in the lane's own height. */
  dense?: boolean;
  /** Sources whose windows are neither drawn nor counted in a dense chart, by id. */
  hidden?: ReadonlySet<string>;
  strip?: boolean;
  milestones?: boolean;
}

/** What of a view decides how much room each thing takes: neither the range, the age nor the order does. */
export interface Shown {
  /** Whether groups have headings. */
  grouped: boolean;
  opened: ReadonlySet<string>;
  dense: boolean;
  strip: boolean;
  milestones: boolean;
}

export const shownIn = (view: ChartView): Shown => ({
  grouped: view.order === 'group' && !view.dense,
  opened: view.opened,
  dense: view.dense ?? false,
  strip: view.strip !== false,
  milestones: view.milestones ?? false,
});
