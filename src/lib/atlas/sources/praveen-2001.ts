import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'praveen-2001',
  short: 'Praveen et al. 2001',
  year: 2001,
  tier: 'review',
  basis: 'read',
  claims: [],
  counts: [],
};
