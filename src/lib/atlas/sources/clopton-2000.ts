import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'clopton-2000',
  short: 'Clopton et al. 2000',
  year: 2000,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'atnr',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'within 5 days of birth',
        unit: 'd',
        low: 0,
        high: 5,
      },
      integratesStatus: 'not-stated',
      population: '42 healthy newborns',
    },
  ],
  counts: [],
};
