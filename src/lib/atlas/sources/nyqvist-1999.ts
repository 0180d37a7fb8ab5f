import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'nyqvist-1999',
  short: 'Nyqvist et al. 1999',
  year: 1999,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'rooting',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'efficient rooting at 28 weeks',
        unit: 'wkPMA',
        low: 28,
        high: 28,
      },
      integratesStatus: 'not-stated',
      population: '71 preterm infants',
    },
    {
      reflex: 'sucking',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'at first contact from 27.9 wk; nutritive from 30.6; long bursts at 32',
        unit: 'wkPMA',
        low: 27.9,
        high: 32,
      },
      integratesStatus: 'not-stated',
      population: '71 preterm infants',
    },
  ],
  counts: [],
};
