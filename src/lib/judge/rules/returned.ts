/** Returned: elicited again after a visit, following one where it was elicited, at which it was not. */
import { isElicited } from '../../case/finding.ts';
import type { Rule } from './rule.ts';

export const returned: Rule = ({ finding, on, history }) => {
  if (history.length < 3 || !isElicited(finding.response)) return undefined;
  let seen = false;
  for (const answer of history) {
    if (answer.on >= on) return undefined;
    if (seen && !answer.elicited) return { flag: 'returned', asks: 'discuss' };
    seen ||= answer.elicited;
  }
  return undefined;
};
