import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'romeo-2009',
  short: 'Romeo et al. 2009',
  year: 2009,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'protective-forward',
      variant: 'forward',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted:
          'complete form most often at 9 months corrected; 21 percent still incomplete only by 12',
        unit: 'mo',
        low: 9,
        high: 9,
      },
      integratesStatus: 'not-stated',
      population: '484 near-term infants',
    },
  ],
  counts: [],
};
