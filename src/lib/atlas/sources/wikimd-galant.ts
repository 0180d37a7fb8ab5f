import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wikimd-galant',
  short: 'WikiMD, Galant',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'galant',
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
        asPrinted: 'around 6 months',
        unit: 'mo',
        low: 6,
        high: 6,
      },
    },
  ],
  counts: [],
};
