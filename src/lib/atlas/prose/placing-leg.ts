import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['placing reflex (lower limb)', 'foot placing'],
  sides: 'Each foot separately.',
  position: 'Held upright, one foot free, the top of the foot near a table edge.',
  stimulus: 'The top of the foot is brought up against the edge.',
  positive: 'Hip and knee flex, the foot lifts and then sets down on the surface.',
  pitfalls: [
    'Pressing the sole, which tests positive support.',
    'Both feet touching.',
    'Tilting the infant, which adds balance reactions.',
  ],
  purpose: 'A tactile-led placing of the foot; later becomes visually guided placing.',
  reported: {
    persistence: {
      text: 'Becomes voluntary placing rather than disappearing in the usual sense.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Present in some very preterm infants but not uniform at term.',
      sources: ['allen-capute-1986'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A lasting difference prompts a look for a peripheral or one-sided problem.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'left-foot': 'Lift, then set down. The ankle dorsiflexes.',
  },
};
