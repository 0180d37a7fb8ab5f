import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'tilting-howto',
  short: 'Health site, tilting reactions',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [],
  counts: [],
};
