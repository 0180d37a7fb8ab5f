import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'sarinoglu-1996',
  short: 'Sarinoglu et al. 1996',
  year: 1996,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
