/** The same chart as rows. */
import type { AxisDay } from '../age/axis.ts';
import type { SourceCount } from '../atlas/families.ts';
import type { Group } from '../atlas/types.ts';
import { orderOf } from './lanes.ts';
import { readLane } from './layout.ts';
import type { ChartData, ChartView, LaneFigures, MarkData } from './model.ts';

export interface TableRow {
  id: string;
  group: Group | null;
  figures: LaneFigures;
  sources: SourceCount;
  /** Mean expectation at the age of the age line; null where no source speaks. */
  expected: number | null;
  /** What was found at each visit, in their order; empty where it was not tested. */
  visits: readonly (readonly MarkData[])[];
}

export interface ChartTableData {
  age: AxisDay;
  /** Dates of the visits, as `YYYY-MM-DD`. */
  visits: readonly string[];
  rows: readonly TableRow[];
}

/** One row for each lane, in the order in which the chart shows them. */
export function tableOf(data: ChartData, view: Pick<ChartView, 'age' | 'order'>): ChartTableData {
  const byId = new Map(data.lanes.map((lane) => [lane.id, lane]));
  const visits = data.child?.visits ?? [];
  const marks = data.child?.marks ?? [];
  return {
    age: view.age,
    visits: visits.map((visit) => visit.on),
    rows: orderOf(data.lanes, view.order).flatMap((id): TableRow[] => {
      const lane = byId.get(id);
      if (!lane) return [];
      const { figures, sources, expected } = readLane(lane, view.age);
      const found = visits.map((_, index) =>
        marks.filter((mark) => mark.reflex === id && mark.visit === index),
      );
      return [{ id, group: lane.group, figures, sources, expected, visits: found }];
    }),
  };
}
