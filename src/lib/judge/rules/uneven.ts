/** Uneven: at one visit the two sides answer differently. */
import { fromMonths } from '../../age/axis.ts';
import type { UnlikeSides } from '../../atlas/weight.ts';
import { isElicited, strengthOf } from '../../case/finding.ts';
import type { Totals } from '../expectation.ts';
import { INTEGRATED } from '../phases.ts';
import { DISCUSS_SHARE, MARKED_EXPECTATION, MARKED_STEPS, STAYS_DAYS } from '../thresholds.ts';
import type { Rule } from './rule.ts';

/** Whether an age lies within one at which unlike sides are common. */
const isCommonAt = (spans: readonly UnlikeSides[], ageDays: number): boolean =>
  spans.some(
    (span) => ageDays >= fromMonths(span.fromMonths) && ageDays <= fromMonths(span.toMonths),
  );

/** Whether all but few of the sources have it gone by this age. */
const isLetGo = ({ phases, speaking }: Totals): boolean =>
  phases[INTEGRATED]! / speaking >= DISCUSS_SHARE - 1e-12;

/**
 * The less expected side is the one that asks: it lacks what should be there, or still has what should be
 * gone. A marked difference is discussed where the response is expected, where one side still has what all
 * but few of the sources have let go, and where the difference stays from one day to the next; unlike sides
 * that are common in healthy infants are watched until they stay.
 */
export const uneven: Rule = ({ finding, reflex, other, totals, ageDays, stays }) => {
  if (!other || other.response === finding.response) return undefined;
  const gap = strengthOf(finding.response) - strengthOf(other.response);
  const oneMissing = finding.response === 'not-elicited' || other.response === 'not-elicited';
  const marked = oneMissing || Math.abs(gap) >= MARKED_STEPS;
  const common = isCommonAt(reflex.unlikeSides, ageDays);
  const expected = totals.meanExpectation >= MARKED_EXPECTATION;
  const isWeaker = gap < 0;
  // where no source speaks neither side is the less expected one
  const asExpected = totals.anySpeaks && isWeaker !== expected;
  const stands = expected || (oneMissing && isElicited(finding.response) && isLetGo(totals));
  const isFirm = marked && ((stands && !common) || stays >= STAYS_DAYS);
  return {
    flag: 'uneven',
    asks: asExpected ? 'fits' : isFirm ? 'discuss' : 'watch',
    marked,
    other: other.response,
    common,
    asExpected,
    stays,
  };
};
