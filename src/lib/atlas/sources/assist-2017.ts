import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'assist-2017',
  short: 'Hussain et al. 2017',
  year: 2017,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
