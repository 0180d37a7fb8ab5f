import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'straathof-2020',
  short: 'Straathof et al. 2020',
  year: 2020,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
