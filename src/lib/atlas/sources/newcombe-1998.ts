import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'newcombe-1998',
  short: 'Newcombe 1998',
  year: 1998,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
