import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'hadders-algra-2005',
  short: 'Hadders-Algra 2005',
  year: 2005,
  tier: 'review',
  basis: 'read',
  claims: [
    {
      reflex: 'equilibrium-sitting',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'adaptable adjustments from 6 months',
        unit: 'mo',
        low: 6,
        high: 6,
      },
      integratesStatus: 'not-stated',
    },
  ],
  counts: [],
};
