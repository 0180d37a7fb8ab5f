import type { Count } from '../count.ts';

export const counts: readonly Count[] = [
  {
    reflex: 'landau',
    role: 'count',
    asPrinted: 'over 4 months',
    unit: 'mo',
    low: 4,
    high: 11,
    corrected: 'unknown',
    n: null,
    percent: 80,
    qualifier: '=',
    measure: 'kicked while held prone',
    measureId: 'kicking',
    answer: 'other',
    complementary: false,
    healthy: true,
    population: 'healthy infants over 4 months',
    basis: 'read',
    note: 'Of 30 infants in all; the number over 4 months is not printed.',
  },
];
