import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['amphibian reflex'],
  sides: 'Lift each side of the pelvis.',
  position: 'Prone, head in midline, legs extended.',
  stimulus: 'Lift one side of the pelvis.',
  positive: 'The arm, hip and knee on that side flex and the trunk shortens, as if to creep.',
  pitfalls: ['Lifting the whole pelvis.', 'Testing before the infant can prop.'],
  purpose: 'Trunk shortening that starts prone progression.',
  reported: {
    persistence: {
      text: 'Merges into voluntary creeping.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Not eliciting it after about 6 months is described with delayed prone progression.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A side difference is read with one-sided motor findings.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
