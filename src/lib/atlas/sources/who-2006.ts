import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'who-2006',
  short: 'WHO 2006',
  year: 2006,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
