import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'ellenberg-1981',
  short: 'Ellenberg & Nelson 1981',
  year: 1981,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
