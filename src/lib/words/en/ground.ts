/** English for an opened entry: what was seen, and what its verdict rests on. */
import { formatGestation } from '../../age/gestation.ts';
import type { SourcedCount } from '../../atlas/atlas.ts';
import type { Association } from '../../judge/associations.ts';
import type { NearCount } from '../../judge/counts.ts';
import type { JudgedFinding } from '../../judge/judge.ts';
import type { Outcome } from '../../judge/turns.ts';
import type { Shares, Voice } from '../../judge/verdict.ts';
import type { Estimate } from '../../number/likelihood.ts';
import { sides } from './atlas.ts';
import { responses } from './case.ts';
import { verdicts } from './judge.ts';

/** What was seen, for the head of an opened entry: `left obligatory, right elicited`. */
export function seenWords(all: readonly JudgedFinding[]): string {
  // two examiners who saw the same are told once
  const findings = all.filter(
    ({ finding: { side, response } }, index) =>
      all.findIndex(({ finding: of }) => of.side === side && of.response === response) === index,
  );
  const [first, second] = findings;
  if (
    first &&
    second &&
    findings.length === 2 &&
    first.finding.side !== second.finding.side &&
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
  verdict ? `${verdicts[verdict]} ${percent(probability)}` : 'gives no age here';

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

/** What a finding has been reported with: the sign, the outcome, and how far the one predicts the other. */
export function associationSentence({ row, tells }: Association): string {
  const said = [`${upper(row.sign)}, ${row.age}: ${row.outcome}, in ${row.population}.`];
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
    asymmetry: 'Asymmetry has been reported with',
  },
  certainties: {
    counted: 'measured with counts',
    reported: 'reported',
    taught: 'taught, from memory',
  },
  caution:
    'Associations in groups, mostly of infants at risk. They are neither a cause nor a prognosis for this child.',
};

export const presence = {
  title: 'Probability that it is present in this child, by age in months after term',
  term: 'term',
};

/** What another gestation at birth, within what the dating leaves likely, would make of the finding. */
export function otherwiseSentence(way: 'earlier' | 'later', days: number, is: Outcome): string {
  const born = `If the child was really born at ${formatGestation(days)} or ${way}`;
  return is === 'fits'
    ? `${born}, this would be as expected.`
    : `${born}, this would be: ${verdicts[is]}.`;
}
