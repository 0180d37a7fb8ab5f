import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'hoffman-2008',
  short: 'Hoffman et al. 2008',
  year: 2008,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
