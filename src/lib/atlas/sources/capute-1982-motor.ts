import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'capute-1982-motor',
  short: 'Capute et al. 1982',
  year: 1982,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
