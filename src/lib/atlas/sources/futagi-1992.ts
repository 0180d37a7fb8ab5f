import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'futagi-1992',
  short: 'Futagi et al. 1992',
  year: 1992,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
