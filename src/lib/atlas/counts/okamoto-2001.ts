import type { Count } from '../count.ts';

export const counts: readonly Count[] = [
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
];
