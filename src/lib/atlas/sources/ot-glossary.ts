import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'ot-glossary',
  short: 'OT glossary, balance reaction',
  year: null,
  tier: 'course-notes',
  basis: 'read',
  claims: [],
  counts: [],
};
