import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wikipedia-palmar',
  short: 'Wikipedia, palmar grasp',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'palmar-grasp',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: '28 weeks, sometimes 16',
        unit: 'wkPMA',
        low: 16,
        high: 28,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: '2 to 6 months',
        unit: 'mo',
        low: 2,
        high: 6,
      },
    },
  ],
  counts: [],
};
