/** Uneven: at one visit the two sides answer differently. */
import { fromMonths } from '../../age/axis.ts';
import type { UnlikeSides } from '../../atlas/weight.ts';
import { strengthOf } from '../../case/finding.ts';
import { MARKED_EXPECTATION, MARKED_STEPS } from '../thresholds.ts';
import type { Rule } from './rule.ts';

/** Whether an age lies within one at which unlike sides are common. */
const isCommonAt = (spans: readonly UnlikeSides[], ageDays: number): boolean =>
  spans.some(
    (span) => ageDays >= fromMonths(span.fromMonths) && ageDays <= fromMonths(span.toMonths),
  );

export const uneven: Rule = ({ finding, reflex, other, totals, ageDays }) => {
  if (!other || other.response === finding.response) return undefined;
  const steps = Math.abs(strengthOf(finding.response) - strengthOf(other.response));
  const oneMissing = finding.response === 'not-elicited' || other.response === 'not-elicited';
  const marked = oneMissing || steps >= MARKED_STEPS;
  const expected = totals.meanExpectation >= MARKED_EXPECTATION;
  const common = isCommonAt(reflex.unlikeSides, ageDays);
  return {
    flag: 'uneven',
    asks: marked && expected && !common ? 'discuss' : 'watch',
    marked,
    other: other.response,
    common,
  };
};
