/** English for what asks for attention: a verdict in sentences, what it rests on, the orders, the plan. */
import type { CivilDate } from '../../age/civil.ts';
import type { Atlas, SourcedCount } from '../../atlas/atlas.ts';
import type { Side, Station } from '../../atlas/types.ts';
import type { Response } from '../../case/finding.ts';
import type { Interval } from '../../case/course.ts';
import type { Association } from '../../judge/associations.ts';
import type { NearCount } from '../../judge/counts.ts';
import type { Agreement, TurningPoint } from '../../judge/hangs.ts';
import type { JudgedFinding } from '../../judge/judge.ts';
import type { OpenQuestion } from '../../judge/plan.ts';
import type { Shares, Voice } from '../../judge/verdict.ts';
import type { Estimate } from '../../number/likelihood.ts';
import { BY_DATE, dateWords, shortDateWords, type When } from './ages.ts';
import { apart, sides } from './atlas.ts';
import { responses } from './case.ts';
import {
  capSentence,
  notJudgedSentence,
  raisedSentence,
  turningSentence,
  verdictSentence,
  verdicts,
} from './judge.ts';

const onSide = (side: Side): string => (side === 'midline' ? '' : ` on the ${side}`);

interface Uneven {
  side: 'left' | 'right';
  response: Response;
  other: Response;
  visits: number;
}

const OTHER = { left: 'right', right: 'left' } as const;

/** Which side is the weaker, and for how long it has been so. */
export function unevenSentence({ side, response, other, visits }: Uneven): string {
  const again =
    visits > 1 ? (visits === 2 ? ', at both visits' : `, at ${visits} visits in a row`) : '';
  return response === 'not-elicited'
    ? `Not elicited on the ${side}, ${responses[other]} on the ${OTHER[side]}${again}.`
    : `Weaker on the ${side}${again}.`;
}

interface Told {
  lead: JudgedFinding;
  weaker: Uneven | undefined;
  plainlyUneven: boolean;
  agreement: Agreement | undefined;
  turning: TurningPoint | undefined;
}

/** An entry in a few sentences: what stands out, what the sources say, and on what that hangs. */
export function entrySentences(told: Told): string[] {
  const { lead, weaker, plainlyUneven, agreement, turning } = told;
  const { finding, judged, raised, caps } = lead;
  if (judged.verdict === 'not-judged') return [notJudgedSentence(judged.why)];
  const said = caps.map(capSentence);
  for (const one of raised) {
    if (one.flag === 'uneven') continue;
    const sentence = raisedSentence(one, finding.response);
    said.push(
      one.flag === 'obligatory'
        ? sentence.replace('Obligatory', `Obligatory${onSide(finding.side)}`)
        : sentence,
    );
  }
  if (weaker && plainlyUneven) {
    said.push(unevenSentence(weaker));
    if (raised.some((one) => one.common))
      said.push('Unlike sides are common in healthy infants here.');
  }
  if (agreement) said.push(verdictSentence(judged.verdict, finding.response, agreement));
  if (turning) said.push(turningSentence(turning));
  return said;
}

/** What was seen, for the head of an opened entry: `left obligatory, right elicited`. */
export function seenWords(findings: readonly JudgedFinding[]): string {
  const [first, second] = findings;
  if (
    first &&
    second &&
    findings.length === 2 &&
    first.finding.response === second.finding.response
  )
    return `${responses[first.finding.response]} on both sides`;
  return findings
    .map(({ finding: f }) =>
      f.side === 'midline' ? responses[f.response] : `${sides[f.side]} ${responses[f.response]}`,
    )
    .join(', ');
}

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** The shares of a verdict above one per cent, the largest first. */
export function sharesWords(shares: Shares): string {
  return Object.entries(shares)
    .filter(([, share]) => share >= 0.01)
    .sort(([, a], [, b]) => b - a)
    .map(([verdict, share]) => `${verdicts[verdict as keyof Shares]} ${percent(share)}`)
    .join(', ');
}

/** What one source says of the finding: `persisting 98 %`. */
export const voiceWords = ({ verdict, probability }: Voice): string =>
  verdict ? `${verdicts[verdict]} ${percent(probability)}` : 'silent at this age';

const SIGNS = { '=': '', '~': 'about ', '<': 'fewer than ', '>': 'more than ', '': '' } as const;

const infants = ({ n, population }: SourcedCount): string =>
  n === null ? population : `${n} ${population}`;

/** A count of real infants beside a verdict. A measure other than mere presence is named. */
export function countSentence({ count, interval }: NearCount): string {
  const at = `at ${count.asPrinted.replace(/^at /, '')}`;
  const measure = count.measure === 'present' ? 'showed it' : count.measure;
  if (count.percent === null) return `${infants(count)}, ${at}: ${measure}.`;
  const share = `${SIGNS[count.qualifier]}${count.percent} %`;
  const of =
    count.measure === 'present'
      ? `of ${infants(count)} ${measure} ${at}`
      : `of ${infants(count)} ${at}: ${measure}`;
  const range = interval
    ? ` (95 % interval ${percent(interval.low)} to ${percent(interval.high)})`
    : count.n === null
      ? ' (number of infants not printed)'
      : '';
  return `${share} ${of}${range}.`;
}

const times = ({ value, interval }: Estimate): string =>
  `${value.toPrecision(2)} (${interval.low.toPrecision(2)} to ${interval.high.toPrecision(2)})`;

const share = ({ value, interval }: Estimate): string =>
  `${percent(value)} (${percent(interval.low)} to ${percent(interval.high)})`;

/** What a finding has been reported with: the sign, the outcome, and how far the one tells of the other. */
export function associationSentence({ row, tells }: Association): string {
  const said = [`${upper(row.sign)} at ${row.age}: ${row.outcome}, in ${row.population}.`];
  if (row.finding) said.push(row.finding);
  if (tells) {
    const parts = [
      tells.sensitivity && `sensitivity ${share(tells.sensitivity)}`,
      tells.specificity && `specificity ${share(tells.specificity)}`,
      tells.positive && `likelihood ratio with it ${times(tells.positive)}`,
      tells.negative && `without it ${times(tells.negative)}`,
    ].filter(Boolean);
    said.push(`${upper(parts.join(', '))}; 95 % intervals.`);
  } else if (row.sensitivity && row.specificity)
    said.push(
      `Sensitivity ${row.sensitivity.percent} %, specificity ${row.specificity.percent} %, without the children counted.`,
    );
  return said.join(' ');
}

export const associations = {
  titles: {
    persistence: 'Persistence has been reported with',
    absence: 'Absence has been reported with',
    asymmetry: 'Unlike sides have been reported with',
  },
  certainties: {
    counted: 'measured with counts',
    reported: 'reported',
    taught: 'taught, from memory',
  },
  caution:
    'Associations in groups, mostly of infants at risk. They are no cause and no prognosis for this child.',
};

/** A place in an expected order, with this child's interval. */
export function stationWords(station: Station, atlas: Atlas): string {
  const name = (id: string): string => atlas.reflexes.get(id)?.short ?? id;
  switch (station.event) {
    case 'appears':
      return name(station.reflex);
    case 'integrates':
      return `${name(station.reflex)} gone`;
    case 'sets-apart':
      return apart[station.apart];
    case 'reached':
      return (atlas.milestones.get(station.milestone)?.short ?? station.milestone).toLowerCase();
  }
}

export function intervalWords(interval: Interval | null, when: When = BY_DATE): string {
  if (!interval || (!interval.after && !interval.by)) return 'not looked at';
  const { after, by } = interval;
  if (after && by) return `between ${when.bare(after.on)} and ${when.bare(by.on)}`;
  return by ? `by ${when.bare(by.on)}` : after ? `not by ${when.bare(after.on)}` : '';
}

/** An open question with the dates from which an answer would be expected. */
export function questionSentence(
  question: OpenQuestion,
  on: CivilDate,
  when: When = BY_DATE,
): string {
  const awaited = question.awaits === 'to-appear' ? 'there' : 'gone';
  const { most, every } = question;
  if (!most || !every) return `No source dates when it should be ${awaited}.`;
  const past = (date: CivilDate): string => (date <= on ? 'since' : 'from');
  return most === every
    ? `Every source that dates it would have it ${awaited} ${past(every)} ${when.bare(every)}.`
    : `Most sources would have it ${awaited} ${past(most)} ${when.bare(most)}, every one ${past(every)} ${when.bare(every)}.`;
}

export const visitWords = (on: CivilDate): string => shortDateWords(on);

export const attention = {
  title: 'What asks for attention',
  nothing: 'Nothing asks for attention at this visit.',
  noFindings: 'No finding is recorded at this visit yet.',
  noVisit: 'No visit is recorded yet.',
  fits: (n: number): string => (n === 1 ? '1 fits this age' : `${n} fit this age`),
  notJudged: (n: number): string => `${n} not judged`,
  open: (name: string): string => `${name}: reasons and sources`,
  visit: 'Visit',
  firm: 'Firm: every source that speaks gives it nearly all of what it says.',
  hangs: ({ agree, of, voices }: Agreement): string =>
    `Not firm: ${agree} of ${of} sources that speak, ${voices.agree} of ${voices.of} voices, say so.`,
  shares: 'Over the chosen sources',
  expected: (mean: number): string => `Expected at this age: ${mean.toFixed(2)}.`,
  counts: 'Counted in infants near this age',
  noCounts: 'No count of infants near this age is held.',
  sources: 'What it rests on',
  judgedBy: 'Sources that copy one another are one voice.',
  voices: 'Who has it from whom',
  silent: (n: number): string =>
    n === 1 ? '1 source is silent at this age' : `${n} sources are silent at this age`,
  context: 'Beside it, not judged by',
  elicit: 'How it is elicited',
  cautions: 'Handling',
  pitfalls: 'Pitfalls',
  verified: 'Checked with sources',
  reported: 'Reported with it (associations only)',
  persistence: 'Persistence',
  absence: 'Absence',
  asymmetry: 'Asymmetry',
  show: 'Show on the chart',
  page: 'All about it',
  appears: 'appears',
  goes: 'goes',
  loading: 'Loading…',
  loadFailed: 'This part could not be loaded. Reload the page to try again.',
};

export const orders = {
  title: 'Expected orders',
  rest: (n: number): string =>
    n === 1 ? '1 more not looked at yet' : `${n} more not looked at yet`,
  taught: 'Taught by',
  against: 'Contradicted by',
};

export const plan = {
  title: 'Next',
  nothing: 'Nothing would tell much on this date.',
  upsetting: 'Last, since it may upset',
  questions: 'Open questions',
  noQuestions: 'No question is open.',
  before: (born: CivilDate): string => `Choose a date from the birth on ${dateWords(born)} on.`,
  both: 'both sides',
};
