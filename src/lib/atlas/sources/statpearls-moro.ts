import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'statpearls-moro',
  short: 'Edwards & Al Khalili 2023',
  year: 2023,
  tier: 'review',
  basis: 'read',
  claims: [
    {
      reflex: 'moro',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'as early as 25 wk, usual by 30 wk',
        unit: 'wkPMA',
        low: 25,
        high: 30,
        notYetAll: true,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'starts to fade at 12 weeks, gone by 6 months',
        unit: 'mo',
        low: 2.759754,
        high: 6,
      },
    },
  ],
  counts: [],
};
