import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'cp-prompts',
  short: 'Prompts for referral (Childhood Disability LINK)',
  year: null,
  tier: 'government-health',
  basis: 'read',
  claims: [],
  counts: [],
};
