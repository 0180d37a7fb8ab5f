import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'zafeiriou-1998',
  short: 'Zafeiriou et al. 1998',
  year: 1998,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
