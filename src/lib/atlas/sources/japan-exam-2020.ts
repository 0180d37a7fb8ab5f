import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'japan-exam-2020',
  short: 'Japan national exam 2020',
  year: 2020,
  tier: 'government-health',
  basis: 'read',
  claims: [
    {
      reflex: 'rooting',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'birth',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'about 4 months',
        unit: 'mo',
        low: 4,
        high: 4,
      },
    },
    {
      reflex: 'moro',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'birth',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'about 4 months',
        unit: 'mo',
        low: 4,
        high: 4,
      },
    },
    {
      reflex: 'atnr',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'birth',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'about 5 months',
        unit: 'mo',
        low: 5,
        high: 5,
      },
    },
    {
      reflex: 'plantar-response',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'birth',
        unit: 'mo',
        low: 0,
        high: 0,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'about 24 months',
        unit: 'mo',
        low: 24,
        high: 24,
      },
    },
  ],
  counts: [],
};
