import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['hand placing', 'placing reflex (upper limb)'],
  sides: 'Each hand separately.',
  position: 'Held prone or supported at the chest, one hand free near a table edge.',
  stimulus: 'The back of the hand is brought up against the edge.',
  positive: 'The arm flexes and lifts, the hand opens and is set down on the surface.',
  pitfalls: [
    'Letting the infant see the edge once visual placing has begun.',
    'Touching the palm, which gives a grasp.',
  ],
  purpose: 'First setting of the hand for support; replaced by visually guided placing.',
  reported: {
    persistence: {
      text: 'Becomes voluntary reaching and support.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Not read alone.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A lasting difference prompts a look for an arm nerve or one-sided problem.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'left-hand': 'Lift, then set the open hand down.',
  },
};
