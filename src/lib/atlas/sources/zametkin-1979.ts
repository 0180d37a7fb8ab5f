import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'zametkin-1979',
  short: 'Zametkin et al. 1979',
  year: 1979,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
