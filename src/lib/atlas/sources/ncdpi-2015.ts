import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'ncdpi-2015',
  short: 'North Carolina public instruction 2015',
  year: 2015,
  tier: 'government-health',
  basis: 'read',
  claims: [],
  counts: [],
};
