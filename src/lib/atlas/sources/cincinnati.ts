import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'cincinnati',
  short: "Cincinnati Children's",
  year: null,
  tier: 'government-health',
  basis: 'read',
  claims: [
    {
      reflex: 'sucking',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'begins about 32 wk, full about 36 wk',
        unit: 'wkPMA',
        low: 32,
        high: 36,
      },
      integratesStatus: 'not-stated',
    },
    {
      reflex: 'palmar-grasp',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'given',
      integrates: {
        asPrinted: '5-6 months',
        unit: 'mo',
        low: 5,
        high: 6,
      },
    },
    {
      reflex: 'moro',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'to 2 months',
        unit: 'mo',
        low: 2,
        high: 2,
        atLatest: true,
      },
    },
  ],
  counts: [],
};
