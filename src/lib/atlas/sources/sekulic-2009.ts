import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'sekulic-2009',
  short: 'Sekulic et al. 2009',
  year: 2009,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
