import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'boere-2001',
  short: 'Boere-Boonekamp & van der Linden-Kuiper 2001',
  year: 2001,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
