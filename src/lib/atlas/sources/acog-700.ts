import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'acog-700',
  short: 'ACOG 2017',
  year: 2017,
  tier: 'government-health',
  basis: 'read',
  claims: [],
  counts: [],
};
