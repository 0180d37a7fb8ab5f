import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'zafeiriou-2000',
  short: 'Zafeiriou 2000',
  year: 2000,
  tier: 'review',
  basis: 'read',
  claims: [],
  counts: [],
};
