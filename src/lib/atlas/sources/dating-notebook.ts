import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'dating-notebook',
  short: 'Practice notebook, dating',
  year: null,
  tier: 'course-notes',
  basis: 'read',
  claims: [],
  counts: [],
};
