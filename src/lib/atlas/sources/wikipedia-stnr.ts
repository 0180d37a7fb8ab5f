import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wikipedia-stnr',
  short: 'Wikipedia, STNR 2019',
  year: 2019,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'stnr',
      role: 'window',
      basis: 'read',
      appearsStatus: 'vague',
      appearsWords: 'fully developed by 6-8 months',
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'diminished by 9-10 months',
        unit: 'mo',
        low: 9,
        high: 10,
      },
    },
  ],
  counts: [],
};
