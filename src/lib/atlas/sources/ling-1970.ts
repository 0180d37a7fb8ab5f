import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'ling-1970',
  short: 'Ling et al. 1970',
  year: 1970,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
