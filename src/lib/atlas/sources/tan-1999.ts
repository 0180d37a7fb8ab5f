import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'tan-1999',
  short: 'Tan & Tan 1999',
  year: 1999,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
