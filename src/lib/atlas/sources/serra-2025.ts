import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'serra-2025',
  short: 'Serra et al. 2025',
  year: 2025,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [
    {
      reflex: 'any-reflex',
      role: 'context',
      asPrinted: '12-36 months (median 19)',
      unit: 'mo',
      low: 12,
      high: 36,
      corrected: false,
      n: 48,
      percent: 55,
      qualifier: '=',
      measure: 'more than five primitive reflexes still present',
      measureId: 'more-than-five-present',
      answer: 'other',
      complementary: false,
      healthy: false,
      population:
        'children with cerebral palsy from congenital Zika infection (79.2 percent GMFCS V)',
      basis: 'read',
      note: '55 percent of 48 is not a whole number: the base may be smaller. Not a norm.',
    },
  ],
};
