/** English for what is inferred in one child from the sources and all visits: orders, courses, best-fitting ages. */
import { toMonths, type AxisDay } from '../../age/axis.ts';
import type { Atlas } from '../../atlas/atlas.ts';
import type { InferredCourse } from '../../judge/inferred.ts';
import type { Fit, FitKind } from '../../judge/reading/fit.ts';
import type { OrderWord } from '../../judge/reading/order.ts';
import type { OpenReason, PairOrder } from '../../judge/reading/orders.ts';
import type { SequenceCheck } from '../../judge/sequence.ts';
import { dateWords } from './ages.ts';
import { stationWords } from './stations.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const REASONS: Readonly<Record<OpenReason, string>> = {
  'begins-too-late': 'the visits begin too late to show it',
  'not-looked-at': 'not all tested in this child',
  'sources-overlap': 'not yet known: the sources themselves overlap',
  'still-to-come': 'not yet known: still to come',
  undated: 'no chosen source gives an age',
};

/** What is said of an order in a few words. `sure`: the sources by themselves are sure of it. */
export function orderWords(order: OrderWord, reason: OpenReason | null, sure: boolean): string {
  switch (order) {
    case 'in-order':
      return 'in order: the visits show it';
    case 'reversed':
      return sure
        ? 'the visits show the reverse order'
        : 'came in the reverse order, as sources allow';
    case 'against':
      return sure ? 'the visits contradict it' : 'the visits contradict it, as sources allow';
    case 'open':
      return reason ? REASONS[reason] : 'not yet known';
  }
}

/** The same for a whole sequence. */
export const checkWords = ({ order, reason, asks }: SequenceCheck): string =>
  orderWords(order, reason, asks !== 'fits');

/** A sequence in a sentence: `Arms dissociated from each other, then ...: in order: the visits show it.` */
export function orderSentence(check: SequenceCheck, atlas: Atlas): string {
  const names = check.sequence.stations.map((station) => stationWords(station, atlas));
  return `${capital(names.join(', then '))}: ${checkWords(check)}.`;
}

const figure = (p: number): string =>
  p >= 0.995 ? 'over 0.99' : p < 0.005 ? 'under 0.01' : p.toFixed(2);

/** The figures behind an order: what the sources alone would say, and what the child's visits add. */
export function pairSentence(pair: PairOrder, check: SequenceCheck, atlas: Atlas): string {
  const [first, second] = [pair.first, pair.second].map((at) =>
    stationWords(check.sequence.stations[at]!, atlas),
  );
  const said = `${capital(first!)} before ${second!}: ${orderWords(pair.order, pair.reason, pair.sure)}.`;
  if (Number.isNaN(pair.sourcesAlone)) return said;
  return `${said} Probability from the sources alone ${figure(pair.sourcesAlone)}, with this child's visits ${figure(pair.probability)}.`;
}

const KINDS: Readonly<Record<FitKind, string>> = {
  primitive: 'transient responses',
  postural: 'lifelong responses',
  milestones: 'milestones',
};
export const fitKind = (kind: FitKind): string => KINDS[kind];

/** Months after term, to the half month. */
const months = (day: number): string => {
  const half = Math.round(toMonths(day as AxisDay) * 2) / 2;
  return `${Math.floor(half) || (half % 1 ? '' : '0')}${half % 1 ? '½' : ''}`;
};

/** The age at which the findings would be most typical: `4 mo (3 to 5)`, `7 mo or after`. */
export function fitWords({ median, low, high }: Pick<Fit, 'median' | 'low' | 'high'>): string {
  if (low !== null && high !== null)
    return `${months(median)} mo (${months(low)} to ${months(high)})`;
  if (low !== null) return `${months(low)} mo or after`;
  return high === null ? '' : `${months(high)} mo or before`;
}

const percent = (p: number): string =>
  p >= 0.995 ? 'over 99 %' : p < 0.005 ? 'under 1 %' : `${Math.round(p * 100)} %`;

/** What is inferred of one reflex on a date, in sentences. */
export function courseSentences({ probabilities, awaited, on }: InferredCourse): string[] {
  if (!probabilities) return [];
  const { notYet, there, gone } = probabilities;
  const said = [
    `On ${dateWords(on)}: present ${percent(there)}, not yet ${percent(notYet)}, integrated ${percent(gone)}.`,
  ];
  if (awaited) said.push(awaitedSentence(awaited));
  return said;
}

function awaitedSentence({
  event,
  halfBy,
  nineInTenBy,
}: NonNullable<InferredCourse['awaited']>): string {
  const does = event === 'appears' ? 'present' : 'integrated';
  const half = halfBy
    ? `Half of children with this history would have it ${does} by ${dateWords(halfBy)}`
    : `No date is given by which half of children with this history would have it ${does}`;
  return nineInTenBy
    ? `${half}, nine in ten by ${dateWords(nineInTenBy)}.`
    : `${half}. No date is given for nine in ten.`;
}

export const inferred = {
  sequences: 'Sequences',
  figures: 'Figures',
  fits: 'Findings fit best at',
  how: 'How this is read',
  course: 'Inferred for this child',
};
