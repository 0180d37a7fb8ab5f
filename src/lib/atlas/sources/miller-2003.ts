import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'miller-2003',
  short: 'Miller et al. 2003',
  year: 2003,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'swallowing',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'observed across 15-38 weeks',
        unit: 'wkPMA',
        low: 15,
        high: 38,
      },
      integratesStatus: 'not-stated',
      population: '62 control fetuses',
    },
  ],
  counts: [],
};
