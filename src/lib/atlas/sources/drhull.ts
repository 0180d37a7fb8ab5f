import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'drhull',
  short: 'Hull, paediatric pages',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [],
  counts: [],
};
