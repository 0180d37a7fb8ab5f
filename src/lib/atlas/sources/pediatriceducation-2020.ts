import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'pediatriceducation-2020',
  short: "D'Alessandro 2020",
  year: 2020,
  tier: 'course-notes',
  basis: 'read',
  claims: [
    {
      reflex: 'rooting',
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
        asPrinted: '3-4 months awake; to 7-8 months asleep',
        unit: 'mo',
        low: 3,
        high: 8,
      },
    },
    {
      reflex: 'sucking',
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
        asPrinted: '3-4 months awake; to 7-8 months asleep',
        unit: 'mo',
        low: 3,
        high: 8,
      },
    },
  ],
  counts: [],
};
