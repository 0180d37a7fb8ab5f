import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'pineda-2016',
  short: 'Pineda et al. 2016',
  year: 2016,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [
    {
      reflex: 'traction',
      role: 'count',
      asPrinted: 'term-equivalent age',
      unit: 'milestone',
      low: null,
      high: null,
      n: 64,
      hits: 37,
      percent: 58,
      qualifier: '=',
      measure: 'head lag on pull-to-sit, not the response of the arms',
      measureId: 'head-lag',
      answer: 'other',
      complementary: false,
      healthy: false,
      population: 'infants born at 30 weeks or less',
      basis: 'read',
      note: 'Weeks not printed. Lag decreased with postmenstrual age.',
    },
  ],
};
