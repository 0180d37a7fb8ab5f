import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'allinson-2017',
  short: 'Allinson et al. 2017',
  year: 2017,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
