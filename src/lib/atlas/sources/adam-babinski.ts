import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'adam-babinski',
  short: 'A.D.A.M. 2013',
  year: 2013,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'plantar-response',
      role: 'window',
      basis: 'read',
      appearsStatus: 'implied',
      appearsWords: 'birth (implied)',
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'from 12 months to 24 months',
        unit: 'mo',
        low: 12,
        high: 24,
      },
    },
  ],
  counts: [],
};
