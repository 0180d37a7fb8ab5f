import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'forslund-1983',
  short: 'Forslund & Bjerre 1983',
  year: 1983,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
