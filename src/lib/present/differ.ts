/** Where the examiners of one day answered unlike, and what they have agreed on since. */
import { group } from 'd3';
import type { Side } from '../atlas/types.ts';
import { isAnswer, testOf, type Finding, type Response } from '../case/finding.ts';
import type { JudgedVisit } from '../judge/judged.ts';

/** One test on one side, on which examiners of one day gave unlike answers. */
export interface Disagreement {
  side: Side;
  /** As they were recorded, in the order of the visits. */
  answers: readonly { examiner: string; finding: Finding }[];
  /** What they agreed on since; undefined until they have. */
  agreed: Response | undefined;
}

/**
 * Every difference of a day, or of one reflex on it. What gives no answer differs from none.
 * @param day the visits of the day
 */
export function differOn(day: readonly JudgedVisit[], reflex?: string): Disagreement[] {
  if (day.length < 2) return [];
  const all = day.flatMap(({ visit, findings }) =>
    findings
      .filter(({ given }) => isAnswer(given) && (reflex ?? given.reflex) === given.reflex)
      .map((found) => ({ examiner: visit.examiner, found })),
  );
  const byTest = group(all, ({ found: { given } }) => `${testOf(given)} ${given.side}`);
  return [...byTest.values()].flatMap((same): Disagreement[] => {
    const [{ found: first }] = same as [(typeof same)[number]];
    const { given, finding } = first;
    if (same.every(({ found }) => found.given.response === given.response)) return [];
    return [
      {
        side: given.side,
        answers: same.map(({ examiner, found }) => ({ examiner, finding: found.given })),
        agreed: given === finding ? undefined : finding.response,
      },
    ];
  });
}
