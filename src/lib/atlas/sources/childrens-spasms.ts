import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'childrens-spasms',
  short: 'Children’s Health, spasms',
  year: 2023,
  tier: 'government-health',
  basis: 'read',
  claims: [],
  counts: [],
};
