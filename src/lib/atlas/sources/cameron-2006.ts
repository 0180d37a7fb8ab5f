import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'cameron-2006',
  short: 'Cameron & Maehle 2006',
  year: 2006,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
