import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'clinic-2021',
  short: 'Therapy clinic page 2021',
  year: 2021,
  tier: 'course-notes',
  basis: 'read',
  claims: [],
  counts: [],
};
