/**
 * What was seen of a reflex or a milestone, day by day: there if any examiner elicited any side, not there
 * if every side judged was not elicited. What gives no answer says nothing.
 */
import type { CivilDate } from '../../age/civil.ts';
import type { Side } from '../../atlas/types.ts';
import type { Visit } from '../../case/case.ts';
import { isAnswer, isElicited, testOf, type Finding } from '../../case/finding.ts';

/** A day on which a question was answered. */
export interface SeenDay {
  on: CivilDate;
  there: boolean;
}

/** The days of one reflex, or one variant of it, taken as one and a side at a time; oldest first. */
export interface ReflexDays {
  reflex: string;
  variant?: string;
  whole: readonly SeenDay[];
  sides: Readonly<Partial<Record<Side, readonly SeenDay[]>>>;
}

export const OTHER_SIDE = { left: 'right', right: 'left', midline: undefined } as const;

type ByDate = Map<CivilDate, boolean>;
interface Gathered {
  of: Pick<ReflexDays, 'reflex' | 'variant'>;
  whole: ByDate;
  sides: Partial<Record<Side, ByDate>>;
}

const note = (dates: ByDate, on: CivilDate, there: boolean): void =>
  void dates.set(on, (dates.get(on) ?? false) || there);

const inOrder = (dates: ByDate): SeenDay[] =>
  [...dates].sort(([a], [b]) => (a < b ? -1 : 1)).map(([on, there]) => ({ on, there }));

/** Whether a finding answers for its own side: a state cannot explain that one side alone is missing. */
export function answersForSide(finding: Finding, others: readonly Finding[]): boolean {
  if (isAnswer(finding)) return true;
  if (finding.response !== 'not-elicited') return false;
  const other = OTHER_SIDE[finding.side];
  return others.some(
    (one) =>
      testOf(one) === testOf(finding) &&
      one.side === other &&
      one.state === finding.state &&
      isElicited(one.response),
  );
}

/** Everything that was ever looked at, with the days that gave an answer, by its test (`testOf`). */
export function daysOf(visits: readonly Visit[]): Map<string, ReflexDays> {
  const gathered = new Map<string, Gathered>();
  for (const { on, findings } of visits)
    for (const finding of findings) {
      const test = testOf(finding);
      let days = gathered.get(test);
      if (!days) {
        const { reflex, variant } = finding;
        const of = { reflex, ...(variant === undefined ? {} : { variant }) };
        gathered.set(test, (days = { of, whole: new Map(), sides: {} }));
      }
      const there = isElicited(finding.response);
      if (isAnswer(finding)) note(days.whole, on, there);
      if (answersForSide(finding, findings))
        note((days.sides[finding.side] ??= new Map<CivilDate, boolean>()), on, there);
    }
  return new Map(
    [...gathered].map(([test, { of, whole, sides }]) => {
      const ordered: Partial<Record<Side, readonly SeenDay[]>> = {};
      for (const side of ['left', 'right', 'midline'] as const)
        if (sides[side]) ordered[side] = inOrder(sides[side]);
      return [test, { ...of, whole: inOrder(whole), sides: ordered }];
    }),
  );
}

/** Every milestone that was ever looked for: seen on a day if any examiner saw it. */
export function milestoneDaysOf(visits: readonly Visit[]): Map<string, readonly SeenDay[]> {
  const gathered = new Map<string, ByDate>();
  for (const { on, milestones } of visits)
    for (const { milestone, seen } of milestones) {
      let dates = gathered.get(milestone);
      if (!dates) gathered.set(milestone, (dates = new Map<CivilDate, boolean>()));
      note(dates, on, seen);
    }
  return new Map([...gathered].map(([milestone, dates]) => [milestone, inOrder(dates)]));
}
