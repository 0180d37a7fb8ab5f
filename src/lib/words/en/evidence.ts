/** English for what is known of a finding itself: how informative it is, who agrees on it, what changes it. */
import type { Agreement } from '../../atlas/evidence/agreement.ts';
import type { StateEffect } from '../../atlas/evidence/states.ts';
import type { UnlikeCount } from '../../atlas/evidence/unlikeCounts.ts';
import type { WeightReason } from '../../atlas/absence.ts';
import type { Absence, UnlikeSides } from '../../atlas/weight.ts';

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Who was examined: `389 healthy infants`. Words that begin with a number have it already. */
const people = (n: number | null, population: string): string =>
  n === null || /^\d/.test(population) ? population : `${n} ${population}`;

const MEASURES: Readonly<Record<Agreement['measure'], string>> = {
  kappa: 'kappa',
  'intraclass-correlation': 'intraclass correlation',
  correlation: 'correlation',
  'percent-agreement': 'agreement',
  'not-named': 'reliability, measure not named,',
};

const BETWEEN: Readonly<Record<Agreement['between'], string>> = {
  examiners: 'Between examiners',
  tests: 'Tested again',
  'examiners-and-tests': 'Between examiners, and tested again',
  methods: 'Between methods',
  months: 'From one month to the next',
};

const range = ({ low, high }: { low: number; high: number }, unit: string): string =>
  low === high ? `${low}${unit}` : `${low} to ${high}${unit}`;

/** How far examiners agree: `Between examiners, …: kappa 0.4 to 0.6. In 34 preterm infants.` */
export function agreementSentence(row: Agreement): string {
  const { value, measure, interval } = row;
  const unit = measure === 'percent-agreement' ? ' %' : '';
  const figure = value
    ? `${MEASURES[measure]} ${range(value, unit)}${interval ? ` (95 % interval ${range(interval, unit)})` : ''}`
    : (row.words ?? '');
  return `${BETWEEN[row.between]}, ${row.what}: ${figure}. ${upper(people(row.n, row.population))}.`;
}

/** What the state of the infant changes, and in whom that was seen. */
export const stateSentence = ({ effect, n, population }: StateEffect): string =>
  `${effect} ${upper(people(n, population))}.`;

/** How often the sides were unlike: `Different response on the two feet, 1-3 months: 20.7 %. 389 infants.` */
export function unlikeSentence(row: UnlikeCount): string {
  const { sign, asPrinted, percent, of, n, population } = row;
  const base = of ? ` of ${of.number} ${of.what}` : '';
  const share = percent === null ? '' : `: ${percent} %${base}`;
  return `${upper(sign)}, ${asPrinted}${share}. ${upper(people(n, population))}.`;
}

const age = (months: number): string =>
  months < 0 ? `${-months} months before term` : months === 0 ? 'term' : `${months} months`;

/** When unlike sides are common, and why. */
export const unlikeSidesSentence = (
  { fromMonths, toMonths }: UnlikeSides,
  { why }: WeightReason,
): string => `Common from ${age(fromMonths)} to ${age(toMonths)}. ${why}`;

/** What a response that is not elicited says where the sources have it established. */
export const absenceSentence = ({ tells }: Absence, { why }: WeightReason): string =>
  `${tells === 'tells' ? 'Counts in full.' : 'Gives little information.'} ${why}`;

export const evidence = {
  title: 'How informative a finding is',
  help: 'None of this changes an age. Where absence gives little information, or differences between the sides are common, such a finding is to be rechecked at most.',
  absence: 'When it is not elicited',
  sides: 'When the sides differ',
  agreement: 'How far examiners agree',
  states: 'Effect of the infant’s state',
  whole: (n: number): string =>
    n === 1 ? 'On whole examinations: 1 more' : `On whole examinations: ${n} more`,
};
