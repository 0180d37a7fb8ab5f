import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'mizuno-2003',
  short: 'Mizuno & Ueda 2003',
  year: 2003,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'sucking',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'pressure, rate and duration rise 33-36 wk; efficient from 35',
        unit: 'wkPMA',
        low: 32,
        high: 36,
      },
      integratesStatus: 'not-stated',
      population: '24 preterm infants',
    },
    {
      reflex: 'swallowing',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'swallows in breathing pauses at 32-33 wk, at the end of inspiration after 35',
        unit: 'wkPMA',
        low: 35,
        high: 35,
      },
      integratesStatus: 'not-stated',
      population: '24 preterm infants',
    },
  ],
  counts: [],
};
