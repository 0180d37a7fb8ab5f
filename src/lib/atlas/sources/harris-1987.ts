import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'harris-1987',
  short: 'Harris 1987',
  year: 1987,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
