import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'hpo-neck',
  short: 'Phenotype ontology',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'neck-righting',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'birth',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'to 5 years',
        unit: 'y',
        low: 5,
        high: 5,
        atLatest: true,
      },
    },
  ],
  counts: [],
};
