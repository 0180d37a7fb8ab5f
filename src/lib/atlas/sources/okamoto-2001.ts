import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'okamoto-2001',
  short: 'Okamoto et al. 2001',
  year: 2001,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'protective-downward',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'leg extensors brace before floor contact from 1 to 3 months',
        unit: 'mo',
        low: 1,
        high: 3,
      },
      integratesStatus: 'not-stated',
      population: '10 healthy infants',
    },
  ],
  counts: [],
};
