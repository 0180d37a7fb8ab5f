import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'kisilevsky-2000',
  short: 'Kisilevsky et al. 2000',
  year: 2000,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'acoustic-startle',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'body movement and heart response from 30 wk',
        unit: 'wkPMA',
        low: 30,
        high: 30,
      },
      integratesStatus: 'not-stated',
      population: '91 low-risk fetuses',
    },
  ],
  counts: [],
};
