import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'zafeiriou-1995',
  short: 'Zafeiriou et al. 1995',
  year: 1995,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
