import type { Count } from '../count.ts';

export const counts: readonly Count[] = [
  {
    reflex: 'labyrinthine-righting',
    role: 'count',
    asPrinted: 'when rolling first began',
    unit: 'milestone',
    low: null,
    high: null,
    n: 33,
    percent: 15.2,
    qualifier: '=',
    measure: 'head righting on one side only',
    measureId: 'one-side-only',
    answer: 'other',
    complementary: false,
    healthy: true,
    population: 'healthy infants',
    basis: 'read',
    note: '5 of 33; vision allowed.',
  },
];
