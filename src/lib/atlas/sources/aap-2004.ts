import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'aap-2004',
  short: 'AAP 2004',
  year: 2004,
  tier: 'government-health',
  basis: 'read',
  claims: [],
  counts: [],
};
