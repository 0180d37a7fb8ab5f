import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'gpnotebook-atnr',
  short: 'GPnotebook 2018, tonic neck',
  year: 2018,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [],
  counts: [],
};
