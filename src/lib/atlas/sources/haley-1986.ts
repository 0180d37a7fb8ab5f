import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'haley-1986',
  short: 'Haley 1986',
  year: 1986,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
