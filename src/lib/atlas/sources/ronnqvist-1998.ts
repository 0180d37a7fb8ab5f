import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'ronnqvist-1998',
  short: 'Rönnqvist et al. 1998',
  year: 1998,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
