/** English for the labels of what a verdict rests on, and of how a reflex is elicited. */
import type { SourceCount } from '../../atlas/families.ts';
import type { Agreement } from '../../judge/hangs.ts';
import { sourcesWords } from './atlas.ts';

export const rests = {
  firm: 'Firm: every source that speaks gives it nearly all of what it says.',
  hangs: ({ agree, of, voices }: Agreement): string =>
    `Not firm: ${agree} of ${of} sources that speak, ${voices.agree} of ${voices.of} voices, say so.`,
  expected: (mean: number): string => `Expected at this age: ${mean.toFixed(2)}.`,
  counts: 'Counted in infants near this age',
  noCounts: 'No count of infants near this age is held.',
  sources: 'What it rests on',
  judgedBy: 'Sources that copy one another are one voice.',
  voices: 'Sources that share ages',
  silent: (count: SourceCount): string => `Silent at this age: ${sourcesWords(count)}`,
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
};
