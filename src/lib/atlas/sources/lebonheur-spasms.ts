import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'lebonheur-spasms',
  short: 'Le Bonheur, spasms',
  year: null,
  tier: 'government-health',
  basis: 'read',
  claims: [],
  counts: [],
};
