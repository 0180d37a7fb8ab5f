import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'stedman-startle',
  short: 'Medical dictionary 2016',
  year: 2016,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'acoustic-startle',
      role: 'context',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'given',
      integrates: {
        asPrinted: '3-4 months',
        unit: 'mo',
        low: 3,
        high: 4,
      },
    },
  ],
  counts: [],
};
