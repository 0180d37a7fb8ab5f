import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'physiopedia-moro',
  short: 'Physiopedia, Moro reflex',
  year: null,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [],
  counts: [],
};
