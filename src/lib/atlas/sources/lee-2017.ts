import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'lee-2017',
  short: 'Lee et al. 2017',
  year: 2017,
  tier: 'review',
  basis: 'read',
  claims: [],
  counts: [],
};
