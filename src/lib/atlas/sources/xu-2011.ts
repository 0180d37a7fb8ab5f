import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'xu-2011',
  short: 'Xu et al. 2011',
  year: 2011,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
