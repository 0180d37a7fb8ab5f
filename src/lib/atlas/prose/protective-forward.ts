import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['parachute reaction', 'forward parachute', 'forward propping'],
  sides: 'Both arms together; compare them.',
  position: 'Held upright or prone in the air, or seated.',
  stimulus: 'Tip or plunge forward toward the surface.',
  positive: 'Arms reach forward with hands open, wrists back and fingers spread, and take weight.',
  pitfalls: [
    'Plunging so fast the infant startles.',
    'Testing with the infant already leaning on the arms.',
    'Counting fisted hands as complete.',
  ],
  purpose: 'Saves the face and head when falling forward.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'A complete response at 12 months was a good predictor of walking in infants with brain lesions, and late appearance predicted later walking. In near-term infants, those with only an incomplete response walked about a month later.',
      sources: ['romeo-2011', 'romeo-2009'],
      basis: 'read',
    },
    asymmetry: {
      text: 'One arm that does not reach suggests a one-sided problem.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    forward: 'Fingers spread, wrists extended.',
  },
};
