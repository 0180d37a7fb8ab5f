import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'martakis-2017',
  short: 'Martakis et al. 2017',
  year: 2017,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'flexor-withdrawal',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'in the first 72 hours in infants born at 22-26 weeks',
        unit: 'wkPMA',
        low: 22,
        high: 26,
      },
      integratesStatus: 'not-stated',
      population: '19 extremely preterm infants',
    },
  ],
  counts: [
    {
      reflex: 'flexor-withdrawal',
      role: 'count',
      asPrinted: 'first 72 hours, born at 22-26 wk',
      unit: 'wkPMA',
      low: 22,
      high: 26,
      n: 19,
      percent: 100,
      qualifier: '~',
      measure: 'present, low threshold',
      measureId: 'present',
      answer: 'elicited',
      complementary: true,
      healthy: false,
      population: 'extremely preterm infants',
      basis: 'read',
      note: 'Printed for the group.',
    },
  ],
};
