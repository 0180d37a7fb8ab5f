import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'hamer-2016',
  short: 'Hamer & Hadders-Algra 2016',
  year: 2016,
  tier: 'review',
  basis: 'read',
  claims: [],
  counts: [],
};
