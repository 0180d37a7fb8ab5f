import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wolthuis-2015',
  short: 'Wolthuis-Stigter et al. 2015',
  year: 2015,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
