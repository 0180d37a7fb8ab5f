import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'roncesvalles-2000',
  short: 'Roncesvalles et al. 2000',
  year: 2000,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'protective-stepping',
      role: 'context',
      basis: 'read',
      appearsStatus: 'vague',
      appearsWords:
        'rare in the first 2 weeks of walking, grows over 1-3 months of walking, effective after 3-6',
      integratesStatus: 'not-stated',
      population: '25 children aged 9-19 months',
    },
  ],
  counts: [],
};
