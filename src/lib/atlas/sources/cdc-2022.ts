import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'cdc-2022',
  short: 'CDC checklists 2022',
  year: 2022,
  tier: 'government-health',
  basis: 'read',
  claims: [],
  counts: [],
};
