/** Returned: elicited again after a visit, following one where it was elicited, at which it was not. */
import { isElicited } from '../../case/finding.ts';
import type { Rule } from './rule.ts';

export const returned: Rule = ({ finding, before }) => {
  if (!isElicited(finding.response)) return undefined;
  const first = before.findIndex((answer) => answer.elicited);
  const gone = first >= 0 && before.slice(first).some((answer) => !answer.elicited);
  return gone ? { flag: 'returned', asks: 'discuss' } : undefined;
};
