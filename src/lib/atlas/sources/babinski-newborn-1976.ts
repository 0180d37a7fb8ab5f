import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'babinski-newborn-1976',
  short: 'Ross et al. 1976',
  year: 1976,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
