import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'hedberg-2005',
  short: 'Hedberg et al. 2005',
  year: 2005,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [
    {
      reflex: 'equilibrium-sitting',
      role: 'context',
      asPrinted: '1-5 months',
      unit: 'mo',
      low: 1,
      high: 5,
      corrected: 'unknown',
      n: 40,
      percent: null,
      qualifier: '',
      measure: 'muscle response in the right direction to a moving seat, group level',
      measureId: 'muscle-recording',
      answer: 'other',
      complementary: false,
      healthy: true,
      population: 'healthy term infants, eight per month',
      basis: 'read',
      note: 'Direction-specific at every age; fewer muscles took part at 3 months.',
    },
  ],
};
