/** What another birth or due date would change: every verdict that moves, before it is taken. */
import { daysBetween, type CivilDate } from '../age/civil.ts';
import type { Reflex, Side } from '../atlas/types.ts';
import type { Case } from '../case/case.ts';
import { judgeCase, type JudgedFinding, type JudgeOptions } from '../judge/judge.ts';
import type { Attention } from '../judge/rules/rule.ts';
import type { VerdictWord } from '../judge/verdict.ts';

export interface Reading {
  verdict: VerdictWord | 'not-judged';
  attention: Attention;
}

export interface Moved {
  on: CivilDate;
  reflex: Reflex;
  /** Sides that move alike are told once. */
  sides: readonly Side[];
  before: Reading;
  after: Reading;
}

export interface Redated {
  moved: readonly Moved[];
  /** How many verdicts there are, and how many of them move. */
  of: number;
  count: number;
  /** How far the due date moves, days; later is positive. */
  shiftDays: number;
}

const readingOf = ({ judged, attention }: JudgedFinding): Reading => ({
  verdict: judged.verdict,
  attention,
});

const isSame = (a: Reading, b: Reading): boolean =>
  a.verdict === b.verdict && a.attention === b.attention;

/** Compares a record with itself under other dates: the same visits, in the same order. */
export function redated(before: Case, after: Case, options: JudgeOptions): Redated {
  const then = judgeCase(after, options);
  const moved: (Moved & { sides: Side[] })[] = [];
  let of = 0;
  let count = 0;
  judgeCase(before, options).forEach(({ visit, findings }, at) =>
    findings.forEach((found, index) => {
      const other = then[at]?.findings[index];
      if (!other) return;
      of += 1;
      const [was, is] = [readingOf(found), readingOf(other)];
      if (isSame(was, is)) return;
      count += 1;
      const alike = moved.find(
        (m) =>
          m.on === visit.on &&
          m.reflex === found.reflex &&
          isSame(m.before, was) &&
          isSame(m.after, is),
      );
      if (alike) alike.sides.push(found.finding.side);
      else
        moved.push({
          on: visit.on,
          reflex: found.reflex,
          sides: [found.finding.side],
          before: was,
          after: is,
        });
    }),
  );
  const shiftDays = daysBetween(before.child.birth.due, after.child.birth.due);
  return { moved, of, count, shiftDays };
}
