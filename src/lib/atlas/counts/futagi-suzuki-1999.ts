import type { Count } from '../count.ts';

export const counts: readonly Count[] = [
  {
    reflex: 'plantar-grasp',
    role: 'count',
    asPrinted: 'within the first 6 months',
    unit: 'mo',
    low: 0,
    high: 6,
    corrected: 'unknown',
    n: 834,
    percent: 100,
    qualifier: '=',
    measure: 'present at some examination',
    measureId: 'present-at-some-examination',
    answer: 'other',
    complementary: false,
    healthy: true,
    population: 'healthy control infants',
    basis: 'read',
  },
];
