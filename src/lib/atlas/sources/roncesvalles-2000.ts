import type { SourceData } from '../types.ts';

export const source: SourceData = {
  id: 'roncesvalles-2000',
  short: 'Roncesvalles et al. 2000',
  year: 2000,
  tier: 'primary-study',
  basis: 'read',
  claims: [
    {
      reflex: 'protective-stepping',
      role: 'context',
      basis: 'read',
      appearsStatus: 'vague',
      appearsWords:
        'rare in the first 2 weeks of walking, grows over 1-3 months of walking, effective after 3-6',
      integratesStatus: 'not-stated',
      population: '25 children aged 9-19 months',
      note: 'Dated by walking experience, not by age.',
    },
  ],
  counts: [
    {
      reflex: 'protective-stepping',
      asPrinted: 'more than 3 months of walking',
      unit: 'milestone',
      low: null,
      high: null,
      n: null,
      percent: 100,
      qualifier: '=',
      measure: 'no fall on a moving platform, stepping or feet in place',
      population: 'healthy toddlers',
      basis: 'read',
      note: 'Group size not in the abstract (25 in four groups).',
    },
    {
      reflex: 'protective-stepping',
      asPrinted: 'first 2 weeks of walking',
      unit: 'milestone',
      low: null,
      high: null,
      n: null,
      percent: null,
      qualifier: '',
      measure: 'recovery step used',
      population: 'healthy toddlers',
      basis: 'read',
      note: 'Printed as infrequent and ineffective.',
    },
  ],
};
