import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'tachibana-1983',
  short: 'Tachibana 1983',
  year: 1983,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'labyrinthine-righting',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'in suspension 3-8 months; a few months earlier when sitting',
        unit: 'mo',
        low: 3,
        high: 8,
      },
      integratesStatus: 'not-stated',
      population: '33 healthy infants',
    },
  ],
  counts: [],
};
