import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'harris-1984',
  short: 'Harris et al. 1984',
  year: 1984,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
