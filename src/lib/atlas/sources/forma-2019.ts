import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'forma-2019',
  short: 'Forma et al. 2019',
  year: 2019,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'crawling',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: '2 days of age',
        unit: 'd',
        low: 2,
        high: 2,
      },
      integratesStatus: 'not-stated',
      population: '60 newborns',
    },
  ],
  counts: [],
};
