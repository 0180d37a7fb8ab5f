import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'futagi-suzuki-1999',
  short: 'Futagi et al. 1999',
  year: 1999,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'plantar-grasp',
      role: 'window',
      basis: 'read',
      appearsStatus: 'implied',
      integratesStatus: 'not-stated',
      population: '834 control infants',
      appearsWords: 'all positive within first 6 months; most marked 1-4 months',
      correction:
        'The span 0 to 6 months is how long every infant was found positive, not a time of appearing: two other sources find the response in all infants from 25 weeks. Read as there by term.',
    },
  ],
  counts: [
    {
      reflex: 'plantar-grasp',
      role: 'count',
      asPrinted: 'within the first 6 months',
      unit: 'mo',
      low: 0,
      high: 6,
      corrected: 'unknown',
      n: 834,
      percent: 100,
      qualifier: '=',
      measure: 'present at some examination',
      measureId: 'present-at-some-examination',
      answer: 'other',
      complementary: false,
      healthy: true,
      population: 'healthy control infants',
      basis: 'read',
    },
  ],
};
