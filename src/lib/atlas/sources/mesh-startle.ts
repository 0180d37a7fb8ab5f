import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'mesh-startle',
  short: 'MeSH, startle',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [],
  counts: [],
};
