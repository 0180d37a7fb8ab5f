/**
 * All of a child's visits, as far as one finding is read against the others: what was there before, on how
 * many days the sides differed, what was seen and is not now. Each part is worked out when first asked for.
 */
import type { CivilDate } from '../age/civil.ts';
import { DEFAULT_LIMITS } from '../age/clocks.ts';
import type { Side } from '../atlas/types.ts';
import type { Case, Visit } from '../case/case.ts';
import { isAnswer, isElicited, testOf, type Finding } from '../case/finding.ts';
import type { JudgeOptions } from './judge.ts';
import { ChildReading, priorsFor } from './reading/child.ts';
import { lostMilestones, notNowOf, type LostMilestone, type NotNow } from './reading/lost.ts';
import { daysInARow, sideGaps, type SideGap } from './reading/sides.ts';
import type { PastAnswer } from './rules/rule.ts';

/** Every answer of a record by test (`testOf`), then side, oldest first, one entry a date. */
type History = ReadonlyMap<string, Partial<Record<Side, readonly PastAnswer[]>>>;

function historyOf(visits: readonly Visit[]): History {
  const history = new Map<string, Partial<Record<Side, PastAnswer[]>>>();
  for (const { on, findings } of [...visits].sort((a, b) => (a.on < b.on ? -1 : 1)))
    for (const finding of findings) {
      if (!isAnswer(finding)) continue;
      let sides = history.get(testOf(finding));
      if (!sides) history.set(testOf(finding), (sides = {}));
      const answers = (sides[finding.side] ??= []);
      const elicited = isElicited(finding.response);
      const last = answers.at(-1);
      if (last?.on === on) last.elicited ||= elicited;
      else answers.push({ on, elicited });
    }
  return history;
}

const NO_ANSWERS: readonly PastAnswer[] = [];
const keyOf = (on: CivilDate, test: string, side: Side): string => `${on} ${test} ${side}`;

/** Whether anything but a reflex itself is to be discussed on a day, whatever was seen before. */
export type Discusses = (on: CivilDate, besides: string) => boolean;

export class Past {
  readonly record: Case;
  readonly history: History;
  readonly #options: JudgeOptions;
  readonly #discusses: Discusses;
  #reading: ChildReading | undefined;
  #gaps: Map<string, SideGap[]> | undefined;
  #notNow: Map<string, NotNow> | undefined;
  #lostMilestones: readonly LostMilestone[] | undefined;

  constructor(record: Case, options: JudgeOptions, discusses: Discusses) {
    this.record = record;
    this.history = historyOf(record.visits);
    this.#options = options;
    this.#discusses = discusses;
  }

  get reading(): ChildReading {
    const { atlas, sheet, limits = DEFAULT_LIMITS } = this.#options;
    return (this.#reading ??= new ChildReading(this.record, priorsFor(atlas, sheet), limits));
  }

  answers(finding: Finding): readonly PastAnswer[] {
    return this.history.get(testOf(finding))?.[finding.side] ?? NO_ANSWERS;
  }

  /** On how many days in a row, up to one, the same side was the stronger at a test. */
  staysOn(test: string, on: CivilDate): number {
    this.#gaps ??= sideGaps(this.record.visits);
    return daysInARow((this.#gaps.get(test) ?? []).filter((gap) => gap.on <= on));
  }

  /** Everything seen before and not now, by day, test and side; most children have none of it. */
  get notNow(): ReadonlyMap<string, NotNow> {
    this.#notNow ??= this.#mayHaveLost()
      ? new Map(
          notNowOf(this.reading, this.#discusses).map((one) => [
            keyOf(one.on, one.test, one.side),
            one,
          ]),
        )
      : new Map();
    return this.#notNow;
  }

  notNowAt(finding: Finding, on: CivilDate): NotNow | undefined {
    return this.notNow.get(keyOf(on, testOf(finding), finding.side));
  }

  /** Milestones seen before and not now, or lost as the carer says. */
  get lostMilestones(): readonly LostMilestone[] {
    const saysLost = (milestone: string, on: CivilDate): boolean =>
      this.record.visits.some(
        (visit) =>
          visit.on === on &&
          visit.milestones.some((one) => one.milestone === milestone && one.lost === true),
      );
    this.#lostMilestones ??= this.record.visits.some(({ milestones }) => milestones.length > 0)
      ? lostMilestones(this.reading, saysLost)
      : [];
    return this.#lostMilestones;
  }

  /** Whether any side was missing on a day after it was there: without that nothing can be lost. */
  #mayHaveLost(): boolean {
    const { visits } = this.record;
    if (visits.length < 2) return false;
    const seen = new Set<string>();
    return [...visits]
      .sort((a, b) => (a.on < b.on ? -1 : 1))
      .some(({ findings }) => {
        for (const { reflex, response } of findings) if (isElicited(response)) seen.add(reflex);
        return findings.some((f) => f.response === 'not-elicited' && seen.has(f.reflex));
      });
  }
}
