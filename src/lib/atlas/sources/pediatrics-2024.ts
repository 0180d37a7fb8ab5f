import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'pediatrics-2024',
  short: 'Prematurity paradox 2024',
  year: 2024,
  tier: 'review',
  basis: 'read',
  claims: [],
  counts: [],
};
