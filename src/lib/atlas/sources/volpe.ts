import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'volpe',
  short: 'Volpe textbook',
  year: null,
  tier: 'textbook',
  basis: 'memory',
  claims: [
    {
      reflex: 'dolls-eye',
      role: 'window',
      basis: 'memory',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'from about 25 weeks',
        unit: 'wkPMA',
        low: 25,
        high: 25,
      },
      integratesStatus: 'not-stated',
    },
  ],
  counts: [],
};
