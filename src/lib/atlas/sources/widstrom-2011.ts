import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'widstrom-2011',
  short: 'Widstrom et al. 2011',
  year: 2011,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'rooting',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'within the first hour, skin to skin',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'not-stated',
      population: '28 term infants',
    },
    {
      reflex: 'crawling',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'within the first hour, skin to skin',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'not-stated',
      population: '28 term infants',
    },
  ],
  counts: [],
};
