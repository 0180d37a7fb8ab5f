/** Uneven: at one visit the two sides answer differently. */
import { strengthOf } from '../../case/finding.ts';
import { MARKED_EXPECTATION, MARKED_STEPS } from '../thresholds.ts';
import type { Rule } from './rule.ts';

export const uneven: Rule = ({ finding, reflex, other, totals }) => {
  if (!other || other.response === finding.response) return undefined;
  const steps = Math.abs(strengthOf(finding.response) - strengthOf(other.response));
  const oneMissing = finding.response === 'not-elicited' || other.response === 'not-elicited';
  const marked = oneMissing || steps >= MARKED_STEPS;
  const expected = totals.meanExpectation >= MARKED_EXPECTATION;
  const common = reflex.unequalIsCommon;
  return {
    flag: 'uneven',
    asks: marked && expected && !common ? 'discuss' : 'watch',
    marked,
    other: other.response,
    common,
  };
};
