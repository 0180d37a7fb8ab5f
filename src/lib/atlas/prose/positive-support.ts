import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: [
    'positive supporting reflex',
    'primary standing',
    'primary support reaction',
    'leg straightening reflex',
  ],
  sides: 'Both feet together, then each foot.',
  position: 'Held upright under the arms, feet clear of the surface.',
  stimulus: 'Lower so that the balls of the feet touch and take light weight.',
  positive:
    'The legs (and trunk) extend and take partial weight, usually on flat feet, for some seconds.',
  pitfalls: [
    'Bouncing the infant, which gives scissoring and toe standing.',
    'Holding so tightly that no weight passes through the feet.',
    'Reading a stiff toe-standing posture as a strong normal response.',
  ],
  purpose:
    'First weight bearing; it fades before true weight bearing returns later in the first year.',
  reported: {
    persistence: {
      text: 'Strong toe-standing extension past the first months is described with spastic tone.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Not fully developed even at term in preterm infants, so absence in the newborn is often uninformative.',
      sources: ['allen-capute-1986'],
      basis: 'read',
    },
    asymmetry: {
      text: 'Weight taken on one leg only prompts a look at hip and one-sided motor function.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'both-feet':
      'In the newborn hips and knees stay slightly flexed and the feet flat. Stiff toe standing is not the normal form.',
  },
};
