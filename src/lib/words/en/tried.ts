/** English for what is tried, as far as a verdict and the child's head say it; the rest is in course.ts. */
import type { JudgedFinding } from '../../judge/judge.ts';
import { attentions, verdicts } from './judge.ts';

export const open = 'What if';

/** What a tried birth, source or limit makes of a verdict; what it asks for where only that changes. */
export function becomesWords(was: JudgedFinding, is: JudgedFinding): string {
  const [before, after] = [was.judged.verdict, is.judged.verdict];
  return before === after
    ? `${verdicts[after]}: ${attentions[was.attention]} → ${attentions[is.attention]}`
    : `${verdicts[before]} → ${verdicts[after]}`;
}
