import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'pecuch-2021',
  short: 'Pecuch et al. 2021',
  year: 2021,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
