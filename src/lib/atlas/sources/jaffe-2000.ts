import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'jaffe-2000',
  short: 'Jaffe et al. 2000',
  year: 2000,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
