/** English for the labels of what a verdict rests on, and of how a reflex is elicited. */
import type { SourceCount } from '../../atlas/families.ts';
import type { Agreement } from '../../judge/hangs.ts';
import { sourcesWords } from './atlas.ts';

export const rests = {
  firm: 'All sources agree: each that gives an age supports it almost entirely.',
  hangs: ({ agree, of, voices }: Agreement): string =>
    `Depends on the source: ${agree} of ${of} sources that give an age, ${voices.agree} of ${voices.of} voices, support it.`,
  expected: (mean: number): string => `Expected at this age: ${mean.toFixed(2)}.`,
  counts: 'Counted in infants near this age',
  noCounts: 'No count of infants near this age is held.',
  sources: 'Sources behind it',
  judgedBy: 'Sources that copy one another are one voice.',
  voices: 'Sources that share ages',
  silent: (count: SourceCount): string => `No age given here: ${sourcesWords(count)}`,
  context: 'Further context, not used for judging',
  elicit: 'Technique',
  cautions: 'Handling',
  pitfalls: 'Pitfalls',
  verified: 'Checked with sources',
  reported: 'Reported with it (associations only)',
  persistence: 'Persistence',
  absence: 'Absence',
  asymmetry: 'Asymmetry',
  show: 'Show on the chart',
  page: 'Full entry',
  appears: 'appears',
  goes: 'integrates',
};
