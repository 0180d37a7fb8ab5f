import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'stuberg-1989',
  short: 'Stuberg et al. 1989',
  year: 1989,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
