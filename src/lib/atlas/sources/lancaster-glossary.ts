import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'lancaster-glossary',
  short: 'Lancaster glossary',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'stepping',
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
        asPrinted: '2-3 months after birth',
        unit: 'mo',
        low: 2,
        high: 3,
      },
    },
  ],
  counts: [],
};
