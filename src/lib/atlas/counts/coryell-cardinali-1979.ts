import type { Count } from '../count.ts';

export const counts: readonly Count[] = [
  {
    reflex: 'atnr',
    role: 'context',
    asPrinted: '1-12 weeks',
    unit: 'mo',
    low: 0.23,
    high: 2.76,
    corrected: 'unknown',
    n: 12,
    percent: null,
    qualifier: '',
    measure: 'observed at every visit, group level',
    measureId: 'spontaneous-posture',
    answer: 'other',
    complementary: false,
    healthy: true,
    population: 'healthy term infants',
    basis: 'read',
    note: 'Spontaneous posture; arm part greatest at 6 weeks, leg part longest at 1 week.',
  },
];
