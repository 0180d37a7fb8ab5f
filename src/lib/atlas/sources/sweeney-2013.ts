import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'sweeney-2013',
  short: 'Sweeney & Blackburn 2013',
  year: 2013,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
