import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'obaidat-2023',
  short: 'Obaidat 2023',
  year: 2023,
  tier: 'course-notes',
  basis: 'read',
  claims: [
    {
      reflex: 'rooting',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: '28 w PMA',
        unit: 'wkPMA',
        low: 28,
        high: 28,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: '3 months',
        unit: 'mo',
        low: 3,
        high: 3,
      },
    },
    {
      reflex: 'atnr',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: '20 w PMA',
        unit: 'wkPMA',
        low: 20,
        high: 20,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: '4-6 months',
        unit: 'mo',
        low: 4,
        high: 6,
      },
    },
  ],
  counts: [],
};
