import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'coryell-cardinali-1979',
  short: 'Coryell & Cardinali 1979',
  year: 1979,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'atnr',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'present at every visit from 1 week; arm maximum at 6 weeks',
        unit: 'wk',
        low: 1,
        high: 6,
      },
      integratesStatus: 'not-stated',
      population: '12 healthy term infants',
    },
  ],
  counts: [],
};
