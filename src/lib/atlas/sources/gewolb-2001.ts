import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'gewolb-2001',
  short: 'Gewolb et al. 2001',
  year: 2001,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'sucking',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'longer and steadier runs from 32 to 40 wk',
        unit: 'wkPMA',
        low: 32,
        high: 40,
      },
      integratesStatus: 'not-stated',
      population: '20 preterm infants',
    },
    {
      reflex: 'swallowing',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'stable rhythm already at 32 wk, unchanged to 40',
        unit: 'wkPMA',
        low: 32,
        high: 40,
      },
      integratesStatus: 'not-stated',
      population: '20 preterm infants',
    },
  ],
  counts: [],
};
