import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'shahidullah-1993',
  short: 'Shahidullah & Hepper 1993',
  year: 1993,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'acoustic-startle',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'first response 20 wk, startle-type by 25',
        unit: 'wkPMA',
        low: 20,
        high: 25,
      },
      integratesStatus: 'not-stated',
      population: 'fetuses 15-25 weeks',
    },
  ],
  counts: [],
};
