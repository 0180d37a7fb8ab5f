import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'lally-valentine',
  short: 'Lally & Valentine-French',
  year: null,
  tier: 'textbook',
  basis: 'read',
  claims: [
    {
      reflex: 'swallowing',
      role: 'window',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'persists',
    },
    {
      reflex: 'flexor-withdrawal',
      role: 'context',
      basis: 'read',
      appearsStatus: 'not-stated',
      integratesStatus: 'persists',
    },
  ],
  counts: [],
};
