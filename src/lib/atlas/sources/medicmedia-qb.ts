import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'medicmedia-qb',
  short: 'Medic Media question bank',
  year: null,
  tier: 'textbook',
  basis: 'read',
  claims: [
    {
      reflex: 'atnr',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'newborn, strongest about 3 months',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: '4-6 months',
        unit: 'mo',
        low: 4,
        high: 6,
      },
    },
    {
      reflex: 'protective-forward',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: '4-9 months',
        unit: 'mo',
        low: 4,
        high: 9,
      },
      integratesStatus: 'persists',
    },
  ],
  counts: [],
};
