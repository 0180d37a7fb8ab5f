/** A judged child as the chart takes it. */
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import { agesAt } from '../case/case.ts';
import { coursesOf, milestoneReached } from '../case/course.ts';

import { chartData } from '../chart/data.ts';
import type { ChartData } from '../chart/model.ts';
import type { CaseJudge, JudgedVisit, JudgeOptions } from '../judge/judge.ts';
import { mapOf } from '../platform/sets.ts';
import { byGroup } from './visibleRange.ts';

/** `lanes` names the reflexes that are shown; none named means all. `visit`: the one whose fits and flags are drawn. */
export function chartOf(
  judge: CaseJudge | undefined,
  visits: readonly JudgedVisit[],
  lanes: readonly string[],
  { atlas, sheet, limits = DEFAULT_LIMITS }: JudgeOptions,
  visit = visits.at(-1),
): ChartData {
  const shown = lanes.length > 0 ? { reflexes: lanes } : {};
  if (!judge) return byGroup(chartData(atlas, sheet, shown));
  const { record, sequences } = judge;
  const agesOn = (on: JudgedVisit['visit']['on']) => agesAt(record, on, limits);
  return byGroup(
    chartData(atlas, sheet, shown, {
      birth: record.child.birth,
      limits,
      visits,
      courses: coursesOf(judge.read.visits, agesOn),
      sequences,
      reading: judge.reading,
      ...(visit ? { shown: visit } : {}),
      fits: visit ? judge.fits(visit.visit) : [],
      milestones: mapOf(atlas.milestones.keys(), (id) =>
        milestoneReached(record.visits, agesOn, id),
      ),
    }),
  );
}
