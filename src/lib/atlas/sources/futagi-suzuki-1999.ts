import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'futagi-suzuki-1999',
  short: 'Futagi et al. 1999',
  year: 1999,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'plantar-grasp',
      role: 'window',
      basis: 'read',
      appearsStatus: 'implied',
      integratesStatus: 'not-stated',
      population: '834 control infants',
      appearsWords: 'all positive within first 6 months; most marked 1-4 months',
    },
  ],
  counts: [],
};
