import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['swimming movements in water'],
  sides: 'Alternating limb movement.',
  position: 'Described with the infant supported prone in water.',
  stimulus: 'Water contact in prone. Do not test in clinic: it is listed for teaching only.',
  positive: 'Rhythmic paddling of arms and legs with side-to-side trunk movement.',
  pitfalls: [
    'Not a bedside test: risk of aspiration and cooling.',
    'Mistaking distress for the reflex.',
  ],
  purpose: 'No function is claimed; often linked with the older aquatic-ancestor idea.',
  reported: {
    persistence: {
      text: 'Fades in the first half-year.',
      sources: ['beststart'],
      basis: 'read',
    },
    absence: {
      text: 'Not tested.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'Not tested.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    water: 'Alternates; the main values show one instant.',
  },
};
