import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'ronnqvist-2000',
  short: 'Rönnqvist & Hopkins 2000',
  year: 2000,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [],
};
