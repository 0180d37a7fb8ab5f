import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'gpnotebook-crossed',
  short: 'GPnotebook 2018',
  year: 2018,
  tier: 'encyclopaedia',
  basis: 'read',
  claims: [
    {
      reflex: 'crossed-extension',
      role: 'window',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'adduction part generally only after 36 weeks',
        unit: 'wkPMA',
        low: 36,
        high: 36,
      },
      integratesStatus: 'given',
      integrates: {
        asPrinted: 'usually only until 1 month',
        unit: 'mo',
        low: 1,
        high: 1,
        atLatest: true,
      },
    },
  ],
  counts: [],
};
