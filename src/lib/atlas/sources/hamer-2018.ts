import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'hamer-2018',
  short: 'Hamer et al. 2018',
  year: 2018,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
