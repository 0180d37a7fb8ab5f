import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'birnholz-1983',
  short: 'Birnholz & Benacerraf 1983',
  year: 1983,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'acoustic-startle',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'first 24-25 wk, consistent after 28 wk',
        unit: 'wkPMA',
        low: 24,
        high: 28,
      },
      integratesStatus: 'not-stated',
    },
  ],
  counts: [],
};
