import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'physiopedia-tlr',
  short: 'Physiopedia',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'tlr',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'by 2 weeks after birth',
        unit: 'wk',
        low: 2,
        high: 2,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: '24 months',
        unit: 'mo',
        low: 24,
        high: 24,
      },
    },
  ],
  counts: [],
};
