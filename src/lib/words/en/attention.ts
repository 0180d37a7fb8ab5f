/** English for what asks for attention: a verdict in sentences, and what it rests on. */
import type { CivilDate } from '../../age/civil.ts';
import type { Side } from '../../atlas/types.ts';
import type { Response } from '../../case/finding.ts';
import type { Agreement } from '../../judge/hangs.ts';
import type { JudgedFinding } from '../../judge/judge.ts';
import type { Trend } from '../../judge/reading/sides.ts';
import { BY_DATE, shortDateWords } from './ages.ts';
import { responses } from './case.ts';
import {
  capSentence,
  notJudgedSentence,
  raisedSentence,
  testsSentences,
  verdictSentence,
} from './judge.ts';

const onSide = (side: Side): string => (side === 'midline' ? '' : ` on the ${side}`);

interface Uneven {
  side: 'left' | 'right';
  response: Response;
  other: Response;
  visits: number;
  trend: Trend;
}

/** How a difference between the sides moved, where that is worth saying. */
const MOVED: Readonly<Partial<Record<Trend, string>>> = {
  growing: ', more than before',
  shrinking: ', less than before',
  turned: '; before, the other side was the weaker one',
};

const OTHER = { left: 'right', right: 'left' } as const;

/** Which side is the weaker, and for how long it has been so. */
export function unevenSentence({ side, response, other, visits, trend }: Uneven): string {
  const again =
    visits > 1 ? (visits === 2 ? ', at both visits' : `, at ${visits} visits in a row`) : '';
  const moved = MOVED[trend] ?? '';
  return response === 'not-elicited'
    ? `Not elicited on the ${side}, ${responses[other]} on the ${OTHER[side]}${again}${moved}.`
    : `Weaker on the ${side}${again}${moved}.`;
}

interface Told {
  lead: JudgedFinding;
  weaker: Uneven | undefined;
  plainlyUneven: boolean;
  agreement: Agreement | undefined;
}

/** An entry in a few sentences: what stands out, what the sources say, and what that depends on. */
export function entrySentences(told: Told, when = BY_DATE): string[] {
  const { lead, weaker, plainlyUneven, agreement } = told;
  const { finding, judged, raised, caps } = lead;
  const said =
    judged.verdict === 'not-judged' ? [notJudgedSentence(judged.why)] : caps.map(capSentence);
  // what nothing holds back comes before what holds the verdict back
  const first: string[] = [];
  for (const one of raised) {
    if (one.flag === 'uneven') continue;
    const sentence = raisedSentence(one, finding.response, when);
    const at = one.asks === 'discuss' ? first : said;
    at.push(
      one.flag === 'obligatory'
        ? sentence.replace('Obligatory', `Obligatory${onSide(finding.side)}`)
        : sentence,
    );
  }
  said.unshift(...first);
  if (weaker && plainlyUneven) {
    said.push(unevenSentence(weaker));
    if (raised.some((one) => one.common))
      said.push('Differences between the sides are common in healthy infants at this age.');
  }
  if (agreement && judged.verdict !== 'not-judged')
    said.push(verdictSentence(judged.verdict, finding.response, agreement));
  said.push(...testsSentences(lead));
  return said;
}

export const visitWords = (on: CivilDate): string => shortDateWords(on);

export const attention = {
  title: 'Findings to review',
  nothing: 'Nothing is flagged at this visit.',
  noFindings: 'No finding is recorded at this visit yet.',
  noVisit: 'No visit is recorded yet.',
  fits: (n: number): string => `${n} not flagged`,
  notJudged: (n: number): string => `${n} not judged`,
  loading: 'Loading…',
  loadFailed: 'This part could not be loaded. Reload the page to try again.',
};
