import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'vangijn-1977',
  short: 'van Gijn 1977',
  year: 1977,
  tier: 'textbook',
  basis: 'read',
  claims: [
    {
      reflex: 'plantar-grasp',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'generally present during the first year',
        unit: 'mo',
        low: 12,
        high: 12,
      },
    },
  ],
  counts: [],
};
