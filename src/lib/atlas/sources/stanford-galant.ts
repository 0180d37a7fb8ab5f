import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'stanford-galant',
  short: 'Stanford newborn nursery, Galant',
  year: null,
  tier: 'course-notes',
  basis: 'read',
  claims: [],
  counts: [],
};
