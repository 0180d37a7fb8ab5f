import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wenzel-1978',
  short: 'Wenzel 1978',
  year: 1978,
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
        asPrinted: 'starts with about 4 months, fully developed from 9 months onwards',
        unit: 'mo',
        low: 4,
        high: 9,
      },
      integratesStatus: 'not-stated',
      population: 'normal infants, moved toward a large patterned surface',
    },
  ],
  counts: [],
};
