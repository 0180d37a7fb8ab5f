/** The milestones of a visit, read against their published windows. */
import type { Ages } from '../age/clocks.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Milestone } from '../atlas/types.ts';
import type { MilestoneSeen, Visit } from '../case/case.ts';
import { isReplaced, type LostMilestone } from './reading/lost.ts';
import { milestoneAsks } from './reading/milestone.ts';
import type { Attention } from './rules/rule.ts';

/**
 * Why a milestone asks for what it does: seen; not seen, and still in time; past the 90th or the 99th
 * percentile of its window; seen before and not now, or lost as the carer says; a later skill is there, which
 * takes its place; no window is published for it.
 */
export type MilestoneWhy =
  | 'seen'
  | 'in-time'
  | 'past-90th'
  | 'past-99th'
  | 'seen-before'
  | 'lost'
  | 'replaced'
  | 'no-window';

export interface JudgedMilestone {
  milestone: Milestone;
  seen: boolean;
  attention: Attention;
  why: MilestoneWhy;
  /** For seen before and lost. */
  lost?: LostMilestone;
}

/**
 * Crawling may be skipped: of 816 healthy children 4.3 in 100 never crawled on hands and knees (WHO 2006), so
 * that a child who does not is watched at most.
 */
const MAY_BE_SKIPPED: ReadonlySet<string> = new Set(['crawling']);

function judgeOne(
  { milestone: id, seen }: MilestoneSeen,
  milestone: Milestone,
  visit: Visit,
  ages: Ages,
  lost: LostMilestone | undefined,
): JudgedMilestone {
  const said = (attention: Attention, why: MilestoneWhy): JudgedMilestone => ({
    milestone,
    seen,
    attention,
    why,
    ...(lost ? { lost } : {}),
  });
  if (lost) return said(lost.asks, lost.confirmed ? 'lost' : 'seen-before');
  if (seen) return said('fits', 'seen');
  if (isReplaced(id, visit)) return said('fits', 'replaced');
  if (!milestone.window) return said('not-judged', 'no-window');
  const asks = milestoneAsks(milestone.window, ages.axisDay);
  if (asks === undefined) return said('fits', 'in-time');
  const why = asks === 'discuss' ? 'past-99th' : 'past-90th';
  return said(MAY_BE_SKIPPED.has(id) ? 'watch' : asks, why);
}

/** Every milestone looked for at a visit. @param lost those seen before and not now in this child */
export function judgeMilestones(
  visit: Visit,
  ages: Ages,
  atlas: Atlas,
  lost: readonly LostMilestone[],
): JudgedMilestone[] {
  return visit.milestones.flatMap((looked): JudgedMilestone[] => {
    const milestone = atlas.milestones.get(looked.milestone);
    if (!milestone) return [];
    const its = lost.find((one) => one.on === visit.on && one.milestone === looked.milestone);
    return [judgeOne(looked, milestone, visit, ages, its)];
  });
}
