import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'vanvlimmeren-2008',
  short: 'van Vlimmeren et al. 2008',
  year: 2008,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
