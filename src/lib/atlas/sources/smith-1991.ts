import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'smith-1991',
  short: 'Smith et al. 1991',
  year: 1991,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [
    {
      reflex: 'acoustic-startle',
      role: 'context',
      asPrinted: 'low-risk pregnancies within 1 week of delivery',
      unit: 'milestone',
      low: null,
      high: null,
      n: 116,
      hits: 106,
      percent: 91.4,
      qualifier: '=',
      measure: 'habituated, by heart rate',
      measureId: 'fetal-habituation-heart-rate',
      answer: 'other',
      complementary: false,
      healthy: true,
      population: 'low-risk term fetuses',
      basis: 'read',
      note: 'Ten (8.6 percent) did not habituate; all those infants did well.',
    },
  ],
};
