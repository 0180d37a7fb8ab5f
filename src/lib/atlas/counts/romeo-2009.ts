import type { Count } from '../count.ts';

export const counts: readonly Count[] = [
  {
    reflex: 'protective-forward',
    variant: 'forward',
    role: 'count',
    asPrinted: 'by 12 months',
    unit: 'mo',
    low: 12,
    high: 12,
    corrected: true,
    n: 484,
    percent: 21,
    qualifier: '=',
    measure: 'incomplete response only',
    measureId: 'incomplete-only',
    answer: 'other',
    complementary: false,
    healthy: true,
    population: 'near-term infants',
    basis: 'read',
    note: 'The parachute.',
  },
];
