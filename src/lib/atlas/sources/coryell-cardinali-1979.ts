import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'coryell-cardinali-1979',
  short: 'Coryell & Cardinali 1979',
  year: 1979,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'atnr',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'present at every visit from 1 week; arm maximum at 6 weeks',
        unit: 'wk',
        low: 1,
        high: 6,
      },
      integratesStatus: 'not-stated',
      population: '12 healthy term infants',
      note: 'Study ended at 12 weeks.',
    },
  ],
  counts: [
    {
      reflex: 'atnr',
      role: 'context',
      asPrinted: '1-12 weeks',
      unit: 'mo',
      low: 0.23,
      high: 2.76,
      corrected: 'unknown',
      n: 12,
      percent: null,
      qualifier: '',
      measure: 'observed at every visit, group level',
      measureId: 'spontaneous-posture',
      answer: 'other',
      complementary: false,
      healthy: true,
      population: 'healthy term infants',
      basis: 'read',
      note: 'Spontaneous posture; arm part greatest at 6 weeks, leg part longest at 1 week.',
    },
  ],
};
