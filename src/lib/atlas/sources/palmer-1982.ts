import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'palmer-1982',
  short: 'Palmer et al. 1982',
  year: 1982,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
