import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'anday-1988',
  short: 'Anday et al. 1988',
  year: 1988,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
