import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'futagi-1987',
  short: 'Futagi et al. 1987',
  year: 1987,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'babkin',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'could be elicited until the fourth month of life',
        unit: 'mo',
        low: 3,
        high: 4,
        atLatest: true,
      },
      population: '258 healthy infants; preterm infants by corrected age',
    },
  ],
  counts: [],
};
