import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['pout reflex', 'lip reflex', 'orbicularis oris reflex'],
  sides: 'Midline tap.',
  position: 'Supine, awake, mouth closed and relaxed.',
  stimulus: 'A light tap on the closed lips near the midline.',
  positive: 'The lips purse forward into a pout.',
  pitfalls: [
    'Pressing on the teeth or gums.',
    'Testing a crying infant.',
    'Treating it as a frontal release sign: in infancy it is expected.',
  ],
  purpose: 'Part of the early feeding group; its reappearance in adults is a frontal release sign.',
  reported: {
    persistence: {
      text: 'Expected in infancy; taught as one of the reflexes held down by the maturing frontal lobe. The age it fades is poorly documented.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Not read alone.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A side pull suggests facial nerve weakness.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
