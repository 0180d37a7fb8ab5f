import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'saint-anne-dargassies',
  short: 'Saint-Anne Dargassies',
  year: null,
  tier: 'course-notes',
  basis: 'read',
  claims: [
    {
      reflex: 'crossed-extension',
      role: 'context',
      basis: 'read',
      appearsStatus: 'given',
      appears: {
        asPrinted: 'third stage builds up over the last month of pregnancy',
        unit: 'wkPMA',
        low: 36,
        high: 40,
      },
      integratesStatus: 'not-stated',
    },
  ],
  counts: [],
};
