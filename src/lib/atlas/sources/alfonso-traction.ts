import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'alfonso-traction',
  short: 'Alfonso, arm traction',
  year: null,
  tier: 'course-notes',
  basis: 'read',
  claims: [],
  counts: [],
};
