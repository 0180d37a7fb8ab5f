import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'beintema-1968',
  short: 'Beintema 1968',
  year: 1968,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
