import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'jaffe-1994',
  short: 'Jaffe et al. 1994',
  year: 1994,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'protective-downward',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'mean 9.2 months',
        unit: 'mo',
        low: 9.2,
        high: 9.2,
      },
      integratesStatus: 'not-stated',
      population: '190 healthy infants',
    },
    {
      reflex: 'protective-forward',
      variant: 'forward',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'mean 8.9 months',
        unit: 'mo',
        low: 8.9,
        high: 8.9,
      },
      integratesStatus: 'not-stated',
      population: '190 healthy infants',
    },
  ],
  counts: [],
};
