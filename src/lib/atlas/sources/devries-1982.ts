import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'devries-1982',
  short: 'de Vries et al. 1982',
  year: 1982,
  tier: 'primary-study',
  basis: 'memory',
  claims: [
    {
      reflex: 'sucking',
      role: 'context',
      basis: 'memory',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'sucking movements seen about 12-14 weeks by ultrasound',
        unit: 'wkPMA',
        low: 12,
        high: 14,
      },
      integratesStatus: 'not-stated',
    },
    {
      reflex: 'swallowing',
      role: 'window',
      basis: 'memory',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'about 12-14 weeks',
        unit: 'wkPMA',
        low: 12,
        high: 14,
      },
      integratesStatus: 'not-stated',
    },
  ],
  counts: [],
};
