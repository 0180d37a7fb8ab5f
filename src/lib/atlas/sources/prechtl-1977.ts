import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'prechtl-1977',
  short: 'Prechtl 1977',
  year: 1977,
  tier: 'textbook',
  basis: 'memory',
  claims: [],
  counts: [],
};
