import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'health-explainer',
  short: 'Health explainer page',
  year: null,
  tier: 'course-notes',
  basis: 'read',
  claims: [],
  counts: [],
};
