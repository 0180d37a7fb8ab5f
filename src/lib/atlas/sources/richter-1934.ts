import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'richter-1934',
  short: 'Richter 1934',
  year: 1934,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
