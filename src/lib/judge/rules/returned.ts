/**
 * Returned: elicited again after a visit, following one where it was elicited, at which it was not. One miss
 * is no integration: it is to be discussed where at a miss it had more likely gone than not, by the sources and
 * the days up to then, and watched where it had likely been missed.
 */
import { isElicited } from '../../case/finding.ts';
import { CREDIBLY_GONE } from '../thresholds.ts';
import type { Rule } from './rule.ts';

export const returned: Rule = ({ finding, on, history, goneBy }) => {
  if (history.length < 3 || !isElicited(finding.response)) return undefined;
  let seen = false;
  const missed = history.filter((answer) => {
    const isMissed = answer.on < on && seen && !answer.elicited;
    seen ||= answer.on < on && answer.elicited;
    return isMissed;
  });
  if (missed.length === 0) return undefined;
  const asks = missed.some((miss) => goneBy(miss.on) >= CREDIBLY_GONE) ? 'discuss' : 'watch';
  return { flag: 'returned', asks };
};
