/** What is looked at: the part of the axis, the age line, the lanes and what is pointed at. */
import type { AxisDay } from '../age/axis.ts';
import type { LaneOrder, Stretch } from '../chart/model.ts';
import { NONE, toggled } from '../platform/sets.ts';

/** Which lanes are shown: those that ask for attention at the visit, those looked at, or all. */
export const LANE_CHOICES = ['asking', 'tested', 'all'] as const;
export type LaneChoice = (typeof LANE_CHOICES)[number];

export class View {
  /** The part of the axis in sight; undefined: the first sight. */
  range = $state.raw<Stretch | undefined>(undefined);
  /** Where the age line was moved to; undefined: at the visit that is shown. */
  movedTo = $state.raw<AxisDay | undefined>(undefined);
  order = $state<LaneOrder>('integrating');
  lanes = $state<LaneChoice>('tested');
  opened = $state.raw<ReadonlySet<string>>(NONE);
  milestones = $state(false);
  asTable = $state(false);
  /** The reflex pointed at, on the chart or beside it. */
  lit = $state<string | undefined>(undefined);
  /** The reflex whose verdict is open. */
  reading = $state<string | undefined>(undefined);
  /** The visit whose verdicts are shown, by its id; undefined: the last. */
  visit = $state<string | undefined>(undefined);

  setRange(range: Stretch | undefined): void {
    this.range = range;
  }

  moveAge(day: AxisDay): void {
    this.movedTo = day;
  }

  setOrder(order: LaneOrder): void {
    this.order = order;
  }

  showLanes(lanes: LaneChoice): void {
    this.lanes = lanes;
  }

  toggleLane(id: string): void {
    this.opened = toggled(this.opened, id);
  }

  toggleMilestones(): void {
    this.milestones = !this.milestones;
  }

  toggleTable(): void {
    this.asTable = !this.asTable;
  }

  light(reflex: string | undefined): void {
    this.lit = reflex;
  }

  /** Opens a verdict, or closes it when it is open. */
  read(reflex: string): void {
    this.reading = this.reading === reflex ? undefined : reflex;
  }

  /** Shows a visit's verdicts, with the age line at it. */
  showVisit(id: string | undefined): void {
    this.visit = id;
    this.movedTo = undefined;
    this.reading = undefined;
  }

  /** Another child: nothing of the last one stays in view. */
  reset(): void {
    this.range = undefined;
    this.opened = NONE;
    this.lit = undefined;
    this.showVisit(undefined);
  }
}
