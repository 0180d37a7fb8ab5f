import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'surowinska-2023',
  short: 'Surowinska et al. 2023',
  year: 2023,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
