import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'saini-2020',
  short: 'Saini & Pandey 2020',
  year: 2020,
  tier: 'review',
  basis: 'read',
  claims: [],
  counts: [],
};
