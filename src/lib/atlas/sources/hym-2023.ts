import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'hym-2023',
  short: 'Hym et al. 2023',
  year: 2023,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
