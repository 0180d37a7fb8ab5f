import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['spinal Perez reflex', 'Perez response'],
  sides: 'Midline stroke.',
  position: 'Prone across the hand or lap, limbs free.',
  stimulus: 'A firm fingertip stroke up the spine from the tailbone to the neck.',
  positive:
    'Head and pelvis lift, the back arches, all limbs flex, and the infant cries; the bladder may empty.',
  pitfalls: [
    'It is unpleasant: test last and once.',
    'Stroking beside the spine, which tests Galant.',
    'Reading arching without limb flexion as a full response.',
  ],
  purpose: 'Early spinal extension pattern; of little practical use after the newborn period.',
  reported: {
    persistence: {
      text: 'Beyond about 6 months it is described as a sign of immature spinal control.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Not specific.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'Side pull suggests an added Galant response.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
