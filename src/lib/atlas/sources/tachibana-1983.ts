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
      note: 'Vision allowed, so optical righting also acted.',
    },
  ],
  counts: [
    {
      reflex: 'labyrinthine-righting',
      role: 'count',
      asPrinted: 'when rolling first began',
      unit: 'milestone',
      low: null,
      high: null,
      n: 33,
      percent: 15.2,
      qualifier: '=',
      measure: 'head righting on one side only',
      measureId: 'one-side-only',
      answer: 'other',
      complementary: false,
      healthy: true,
      population: 'healthy infants',
      basis: 'read',
      note: '5 of 33; vision allowed.',
    },
  ],
};
