/** What the chart needs said. It asks by codes and numbers; the sentences are made elsewhere. */
import type { AxisDay } from '../age/axis.ts';
import type { SourceCount, SourcedClaim } from '../atlas/atlas.ts';
import type { Group, Side, Station } from '../atlas/types.ts';
import type { Response } from '../case/finding.ts';
import type { Phase } from '../judge/phases.ts';
import type { CountPoint } from './counted.ts';
import type { FitData, LaneFigures, OrderSaid } from './model.ts';
import type { TickAge } from './ticks.ts';

/** What one source says of a lane at an age. */
export interface SourceReading {
  source: string;
  short: string;
  /** Undefined where the source is silent. */
  phase: Phase | undefined;
  claim: SourcedClaim | undefined;
}

/** A lane at an age, as numbers. */
export interface LaneReading {
  id: string;
  figures: LaneFigures;
  /** Sources in sight that are judged by, and those of them that speak of the age. */
  sources: SourceCount;
  speaking: SourceCount;
  age: AxisDay;
  /** Mean expectation of the sources that speak, 0 to 1; null when none does. */
  expected: number | null;
  said: readonly SourceReading[];
  /** What was tested of it at each visit whose findings say it, oldest first; left out without one. */
  tested?: readonly { on: string; variant: string }[];
  /** The counts that are drawn on the lane, the youngest age first; none where it is not opened. */
  counted: readonly (CountPoint & { near: boolean })[];
}

/** Every text on the chart. Each is short; where several wordings are given the first that fits is used. */
export interface ChartWords {
  /** What the chart is, and what its parts are, for a reader that hears it. */
  chart: string;
  lanes: string;
  sequences: string;
  ageLine: string;
  reflex(id: string): string;
  group(group: Group): string;
  milestone(id: string): string;
  milestones: string;
  /** The figure at a tick, and above the figures what they count. */
  tick(age: TickAge): string;
  weeksCaption: readonly string[];
  monthsCaption: readonly string[];
  term: string;
  /** The age in every clock, the one that counts first; each part stands alone. */
  clocks(age: AxisDay): readonly string[];
  /** The printed figures of a claim, beside its row. */
  claim(claim: SourcedClaim): string;
  /** A lane in one sentence, whatever the age. */
  laneFigures(id: string, figures: LaneFigures, sources: SourceCount): string;
  /** A lane in one sentence, with what the sources lead one to expect at the age. */
  lane(reading: LaneReading): string;
  /** A count of infants, for the point that draws it. */
  count(point: CountPoint): string;
  /** The lane pointed at: what is said of it at the age, and by whom. */
  readout(reading: LaneReading): { title: string; lines: readonly string[] };
  sequence(id: string): string;
  order(said: OrderSaid): string;
  /** What the bands of best-fitting ages are, and one of them. */
  fits: string;
  fit(fit: FitData): string;
  station(station: Station): string;
  response(response: Response): string;
  side(side: Side): string;
  /** What the ridge and the course line mean, for the key. */
  key: { ridge: string; agreed: string; course: string; counted: string };
  /** The same of the ridge, written beside one. */
  height: string;
  table: {
    caption(age: AxisDay): string;
    lane: string;
    group: string;
    appears: string;
    integrates: string;
    sources: string;
    voices: string;
    expected: string;
    /** The two ages between which something happens; null = for life, undefined = not dated. */
    stretch(stretch: { from: AxisDay; to: AxisDay } | null): string;
    lifelong: string;
    share(expected: number | null): string;
    visit(on: string): string;
  };
}
