import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['extensor thrust'],
  sides: 'Each foot separately.',
  position: 'Supine, one leg flexed at hip and knee, the other extended.',
  stimulus: 'A sharp touch to the sole of the flexed leg.',
  positive: 'The flexed leg extends suddenly and cannot be held flexed.',
  pitfalls: [
    'Confusing it with a playful kick or with tickling.',
    'Testing with the leg already extended, which elicits withdrawal instead.',
  ],
  purpose: 'Brief extensor pattern of the early weeks; no lasting function is claimed.',
  reported: {
    persistence: {
      text: 'An uncontrolled thrust after 2 months is described as a sign of delayed reflex maturation.',
      sources: ['fiorentino-1963'],
      basis: 'read',
    },
    absence: {
      text: 'Not required.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'Read with the other spinal-level tests.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
