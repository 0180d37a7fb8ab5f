import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'wikipedia-moro',
  short: 'Wikipedia, Moro reflex',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [],
  counts: [],
};
