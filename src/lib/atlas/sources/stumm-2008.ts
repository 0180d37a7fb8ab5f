import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'stumm-2008',
  short: 'Stumm et al. 2008',
  year: 2008,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'sucking',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: '28-33 weeks GA (non-nutritive bursts), stable by 34',
        unit: 'wkPMA',
        low: 28,
        high: 33,
      },
      integratesStatus: 'not-stated',
      population: 'preterm infants',
    },
  ],
  counts: [],
};
