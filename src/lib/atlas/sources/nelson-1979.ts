import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'nelson-1979',
  short: 'Nelson & Ellenberg 1979',
  year: 1979,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
