import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'statpearls-rooting',
  short: 'Yoo & Mihaila 2022',
  year: 2022,
  tier: 'review',
  basis: 'read',
  claims: [
    {
      reflex: 'rooting',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'about 28 weeks gestation, present at birth',
        unit: 'wkPMA',
        low: 28,
        high: 28,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'about 4 to 6 months',
        unit: 'mo',
        low: 4,
        high: 6,
      },
    },
    {
      reflex: 'sucking',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'usually around 30 to 35 weeks',
        unit: 'wkPMA',
        low: 30,
        high: 35,
      },
      integratesStatus: 'not-stated',
    },
    {
      reflex: 'plantar-grasp',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'about 9 to 12 months',
        unit: 'mo',
        low: 9,
        high: 12,
      },
    },
  ],
  counts: [],
};
