import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'clinic-2015',
  short: 'Therapy clinic page 2015',
  year: 2015,
  tier: 'course-notes',
  basis: 'read',
  claims: [],
  counts: [],
};
