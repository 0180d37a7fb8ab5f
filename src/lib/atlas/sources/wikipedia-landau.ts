import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wikipedia-landau',
  short: 'Wikipedia, Landau',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'landau',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: '3 months',
        unit: 'mo',
        low: 3,
        high: 3,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: '12-24 months',
        unit: 'mo',
        low: 12,
        high: 24,
      },
    },
  ],
  counts: [],
};
