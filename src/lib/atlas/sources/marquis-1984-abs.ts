import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'marquis-1984-abs',
  short: 'Marquis et al. 1984, abstract',
  year: 1984,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
