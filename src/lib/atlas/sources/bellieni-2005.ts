import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'bellieni-2005',
  short: 'Bellieni et al. 2005',
  year: 2005,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [
    {
      reflex: 'acoustic-startle',
      role: 'count',
      asPrinted: '30-34 wk',
      unit: 'wkPMA',
      low: 30,
      high: 34,
      n: 22,
      percent: 100,
      qualifier: '=',
      measure: 'responded, then habituated within 1-9 stimuli',
      measureId: 'responds-and-habituates',
      answer: 'other',
      complementary: false,
      healthy: true,
      population: 'low-risk fetuses',
      basis: 'read',
      note: 'Mean 4.2 stimuli.',
    },
  ],
};
