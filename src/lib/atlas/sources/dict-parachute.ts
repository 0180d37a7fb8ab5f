import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'dict-parachute',
  short: 'McGraw-Hill dictionary',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'protective-forward',
      variant: 'forward',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'seen in the 8th-12th month',
        unit: 'mo',
        low: 8,
        high: 12,
      },
      integratesStatus: 'not-stated',
    },
  ],
  counts: [],
};
