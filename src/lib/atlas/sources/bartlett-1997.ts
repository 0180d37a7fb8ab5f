import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'bartlett-1997',
  short: 'Bartlett 1997',
  year: 1997,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
