import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'radiology-2024',
  short: 'Radiology reference 2024',
  year: 2024,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [],
  counts: [],
};
