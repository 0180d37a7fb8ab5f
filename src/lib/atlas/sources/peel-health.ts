import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'peel-health',
  short: 'Peel Public Health',
  year: null,
  tier: 'government-health',
  basis: 'read',
  claims: [
    {
      reflex: 'rooting',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'later-than',
      integrates: {
        asPrinted: 'after 3-4 months',
        unit: 'mo',
        low: 3,
        high: null,
      },
    },
    {
      reflex: 'sucking',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'later-than',
      integrates: {
        asPrinted: 'after about 3 months',
        unit: 'mo',
        low: 3,
        high: null,
      },
    },
    {
      reflex: 'moro',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'between 3 and 6 months',
        unit: 'mo',
        low: 3,
        high: 6,
      },
    },
  ],
  counts: [],
};
