import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'kranen-1997',
  short: 'van Kranen-Mastenbroek 1997',
  year: 1997,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [
    {
      reflex: 'atnr',
      role: 'context',
      asPrinted: '3-8 days',
      unit: 'mo',
      low: 0.1,
      high: 0.26,
      corrected: 'unknown',
      n: 30,
      percent: null,
      qualifier: '',
      measure: 'arm and leg posture after a spontaneous head turn, group level',
      measureId: 'spontaneous-posture',
      answer: 'other',
      complementary: false,
      healthy: false,
      population: 'term newborns, 15 of them small for age',
      basis: 'read',
      note: 'Printed as rare; no share in the abstract.',
    },
  ],
};
