import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'okamoto-2001',
  short: 'Okamoto et al. 2001',
  year: 2001,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'protective-downward',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'leg extensors brace before floor contact from 1 to 3 months',
        unit: 'mo',
        low: 1,
        high: 3,
      },
      integratesStatus: 'not-stated',
      population: '10 healthy infants',
      note: 'Muscle recording during stepping, far earlier than the visible reaction.',
    },
  ],
  counts: [
    {
      reflex: 'protective-downward',
      role: 'context',
      asPrinted: '1-3 months',
      unit: 'mo',
      low: 1,
      high: 3,
      corrected: 'unknown',
      n: 10,
      percent: null,
      qualifier: '',
      measure: 'leg extensor burst before floor contact, group level',
      measureId: 'muscle-recording',
      answer: 'other',
      complementary: false,
      healthy: true,
      population: 'healthy infants',
      basis: 'read',
      note: 'Not seen in the first month.',
    },
  ],
};
