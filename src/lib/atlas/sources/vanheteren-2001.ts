import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'vanheteren-2001',
  short: 'van Heteren et al. 2001',
  year: 2001,
  tier: 'primary-study',
  basis: 'read',
  claims: [],
  counts: [
    {
      reflex: 'acoustic-startle',
      role: 'count',
      asPrinted: '37-40 weeks',
      unit: 'wkPMA',
      low: 37,
      high: 40,
      n: 32,
      hits: 26,
      percent: 81.25,
      qualifier: '=',
      measure: 'habituated (no trunk movement to four stimuli in a row)',
      measureId: 'fetal-habituation-four-stimuli',
      answer: 'other',
      complementary: false,
      healthy: true,
      population: 'healthy term fetuses',
      basis: 'read',
      note: 'Six of 32 kept responding. Median 9.5 stimuli.',
    },
  ],
};
