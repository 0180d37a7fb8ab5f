/**
 * A day's visits together: two examiners of one morning saw one child, and what either of them saw counts.
 * Where their answers differ the one that asks for most is followed, until they agree on one.
 */
import type { CivilDate } from '../age/civil.ts';
import type { Ages } from '../age/clocks.ts';
import type { JudgedFinding, JudgedVisit } from './judged.ts';
import type { JudgedMilestone } from './milestones.ts';
import { together, type Today } from './reading/asks.ts';
import type { SidePattern } from './reading/sides.ts';
import { asksMore } from './rules/rule.ts';

/** The visits by their dates, oldest first; of a date in the order given. */
export function daysOf(visits: readonly JudgedVisit[]): (readonly JudgedVisit[])[] {
  const days = new Map<CivilDate, JudgedVisit[]>();
  for (const one of visits) {
    const same = days.get(one.visit.on);
    if (same) same.push(one);
    else days.set(one.visit.on, [one]);
  }
  return [...days].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, same]) => same);
}

/** Every finding of a day, of each examiner. */
export const findingsOf = (day: readonly JudgedVisit[]): readonly JudgedFinding[] =>
  day.length === 1 ? day[0]!.findings : day.flatMap(({ findings }) => findings);

/** Every milestone of a day once: as the examiner has it whose answer asks for most. */
export function milestonesOf(day: readonly JudgedVisit[]): readonly JudgedMilestone[] {
  const most = new Map<string, JudgedMilestone>();
  for (const one of day.flatMap(({ milestones }) => milestones)) {
    const known = most.get(one.milestone.id);
    if (!known || asksMore(one.attention, known.attention)) most.set(one.milestone.id, one);
  }
  return [...most.values()];
}

/** What a day is read as. */
export interface JudgedDay {
  on: CivilDate;
  ages: Ages;
  visits: readonly JudgedVisit[];
  findings: readonly JudgedFinding[];
  milestones: readonly JudgedMilestone[];
  today: readonly Today[];
  together: readonly string[];
  /** Of each examiner by whose findings the sides differ. */
  patterns: readonly SidePattern[];
}

/** The day of a visit. @param visits all of the record */
export function dayOf(shown: JudgedVisit, visits: readonly JudgedVisit[]): JudgedDay {
  const { on } = shown.visit;
  const same = visits.filter(({ visit }) => visit.on === on);
  const day = same.length > 0 ? same : [shown];
  const findings = findingsOf(day);
  const today = new Map(day.flatMap((one) => one.today).map((one) => [one.code, one]));
  return {
    on,
    ages: shown.ages,
    visits: day,
    findings,
    milestones: milestonesOf(day),
    today: [...today.values()],
    together: together(
      findings.map(({ reflex, attention }) => ({ reflex: reflex.id, asks: attention })),
    ),
    patterns: day.map(({ pattern }) => pattern).filter(({ differences }) => differences.length > 0),
  };
}

/** A day as one visit says it, for what is said of a visit as a whole. */
export const wholeOf = ({
  visits,
  patterns,
  ...day
}: JudgedDay): Pick<JudgedVisit, 'today' | 'together' | 'milestones' | 'pattern'> => ({
  ...day,
  pattern: patterns.find(({ side }) => side !== null) ?? patterns[0] ?? visits[0]!.pattern,
});
