import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'milani-1967',
  short: 'Milani-Comparetti & Gidoni 1967',
  year: 1967,
  tier: 'primary-study',
  basis: 'memory',
  claims: [
    {
      reflex: 'protective-downward',
      role: 'window',
      basis: 'memory',
      appearsStatus: 'given',
      appears: {
        asPrinted: '4 months',
        unit: 'mo',
        low: 4,
        high: 4,
      },
      integratesStatus: 'persists',
    },
    {
      reflex: 'protective-forward',
      variant: 'forward',
      role: 'window',
      basis: 'memory',
      appearsStatus: 'given',
      appears: {
        asPrinted: '7 months',
        unit: 'mo',
        low: 7,
        high: 7,
      },
      integratesStatus: 'persists',
    },
    {
      reflex: 'protective-sideways',
      role: 'window',
      basis: 'memory',
      appearsStatus: 'given',
      appears: {
        asPrinted: '6 months',
        unit: 'mo',
        low: 6,
        high: 6,
      },
      integratesStatus: 'persists',
    },
    {
      reflex: 'protective-backward',
      role: 'window',
      basis: 'memory',
      appearsStatus: 'given',
      appears: {
        asPrinted: '9-10 months',
        unit: 'mo',
        low: 9,
        high: 10,
      },
      integratesStatus: 'persists',
    },
    {
      reflex: 'protective-stepping',
      role: 'window',
      basis: 'memory',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'about 12-15 months',
        unit: 'mo',
        low: 12,
        high: 15,
      },
      integratesStatus: 'persists',
    },
  ],
  counts: [],
};
