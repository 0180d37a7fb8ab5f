import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wikipedia-es-stepping',
  short: 'Wikipedia (es), stepping',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'stepping',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'from the 4th day',
        unit: 'd',
        low: 4,
        high: 4,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'around the first month',
        unit: 'mo',
        low: 1,
        high: 1,
      },
    },
  ],
  counts: [],
};
