import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'ubc-kin355',
  short: 'UBC class notes 2020',
  year: 2020,
  tier: 'course-notes',
  basis: 'read',
  claims: [
    {
      reflex: 'stepping',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'from about one week',
        unit: 'wk',
        low: 1,
        high: 1,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'up to 4 months',
        unit: 'mo',
        low: 4,
        high: 4,
        atLatest: true,
      },
    },
  ],
  counts: [],
};
