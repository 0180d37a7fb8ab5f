import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'bradshaw-2023',
  short: 'Bradshaw et al. 2023',
  year: 2023,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
