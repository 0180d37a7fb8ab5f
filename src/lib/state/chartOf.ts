/** A judged child as the chart takes it. */
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import { agesAt, type Case } from '../case/case.ts';
import { coursesOf, milestoneReached } from '../case/course.ts';

import { chartData } from '../chart/data.ts';
import type { ChartData } from '../chart/model.ts';
import type { JudgedVisit, JudgeOptions } from '../judge/judge.ts';
import { checkSequences } from '../judge/sequence.ts';
import { mapOf } from './sets.ts';
import { byGroup } from './sight.ts';

/** `lanes` names the reflexes that are shown; none named means all. */
export function chartOf(
  record: Case | undefined,
  visits: readonly JudgedVisit[],
  lanes: readonly string[],
  { atlas, sheet, limits = DEFAULT_LIMITS }: JudgeOptions,
): ChartData {
  const shown = lanes.length > 0 ? { reflexes: lanes } : {};
  if (!record) return byGroup(chartData(atlas, sheet, shown));
  const agesOn = (on: JudgedVisit['visit']['on']) => agesAt(record, on, limits);
  return byGroup(
    chartData(atlas, sheet, shown, {
      birth: record.child.birth,
      limits,
      visits,
      courses: coursesOf(record.visits, agesOn),
      sequences: checkSequences(atlas, record.visits, agesOn),
      milestones: mapOf(atlas.milestones.keys(), (id) =>
        milestoneReached(record.visits, agesOn, id),
      ),
    }),
  );
}
