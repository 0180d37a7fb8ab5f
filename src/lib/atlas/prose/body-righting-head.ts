import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['body righting acting on the head'],
  sides: 'Midline.',
  position: 'Side lying or prone on a firm surface.',
  stimulus: 'Contact of the body with the surface itself.',
  positive: 'The head lifts and rights itself against the surface.',
  pitfalls: ['Testing on a soft surface.', 'Reading neck extension from crying.'],
  purpose: 'Head control from contact, alongside the vestibular and visual kinds.',
  reported: {
    persistence: {
      text: 'Absorbed into voluntary head control.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Weak head lift is read with the other head righting tests.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'Head tilt to one side prompts a look at neck muscles and vision.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
