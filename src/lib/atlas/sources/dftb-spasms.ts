import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'dftb-spasms',
  short: 'Don’t Forget the Bubbles, spasms',
  year: null,
  tier: 'course-notes',
  basis: 'read',
  claims: [],
  counts: [],
};
