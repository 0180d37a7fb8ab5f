import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'payne-isaacs',
  short: 'Payne & Isaacs',
  year: null,
  tier: 'textbook',
  basis: 'read',
  claims: [
    {
      reflex: 'babkin',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'typically present at birth',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'not-stated',
    },
  ],
  counts: [],
};
