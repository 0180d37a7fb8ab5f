import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wikimd-tlr',
  short: 'WikiMD, tonic labyrinthine',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'tlr',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'birth (head forward)',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'from about 4 months (forward), by 6 (backward)',
        unit: 'mo',
        low: 4,
        high: 6,
      },
    },
  ],
  counts: [],
};
