import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'futagi-2013',
  short: 'Futagi et al. 2013',
  year: 2013,
  tier: 'review',
  basis: 'read',
  claims: [
    {
      reflex: 'babkin',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'birth',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'gone in the great majority by the end of the 5th month',
        unit: 'mo',
        low: 5,
        high: 5,
        atLatest: true,
      },
    },
  ],
  counts: [],
};
