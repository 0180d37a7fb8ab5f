import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'gagnon-2012',
  short: 'Gagnon et al. 2012',
  year: 2012,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
