import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'andrews-1994',
  short: 'Andrews & Fitzgerald 1994',
  year: 1994,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'flexor-withdrawal',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'from 27.5 weeks, whole leg up to the thigh',
        unit: 'wkPMA',
        low: 27.5,
        high: 27.5,
      },
      integratesStatus: 'not-stated',
      population: '50 infants 27.5-42.5 weeks',
    },
  ],
  counts: [],
};
