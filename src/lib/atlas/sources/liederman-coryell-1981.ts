import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'liederman-coryell-1981',
  short: 'Liederman & Coryell 1981',
  year: 1981,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
