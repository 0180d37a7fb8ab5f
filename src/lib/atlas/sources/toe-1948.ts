import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'toe-1948',
  short: 'Toe reflexes study 1948',
  year: 1948,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
