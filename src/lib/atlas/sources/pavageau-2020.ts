import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'pavageau-2020',
  short: 'Pavageau et al. 2020',
  year: 2020,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
