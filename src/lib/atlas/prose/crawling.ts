import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['Bauer reflex', 'spontaneous crawling of the newborn', 'creeping reflex'],
  sides: 'Alternating; push on each sole in turn.',
  position: 'Prone, head in midline or turned to breathe, limbs free.',
  stimulus: 'Gentle pressure against the soles, or the prone position itself.',
  positive: 'The leg pushes and the opposite arm and leg move, so the infant creeps forward.',
  pitfalls: [
    'Blocking the airway; always watch the face.',
    'Pushing the feet hard rather than giving them something to push on.',
    'Testing on a soft mattress.',
  ],
  purpose: 'Newborn locomotion toward the breast; an early form of four-limbed stepping.',
  reported: {
    persistence: {
      text: 'Fades, then returns as voluntary creeping. It is not a fixed spinal reflex: newborns crawled more when they heard their native language than a foreign one.',
      sources: ['hym-2023'],
      basis: 'read',
    },
    absence: {
      text: 'Not read alone.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A leg that never pushes prompts a look for a one-sided or peripheral problem.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'push-left': 'Then the sides change over.',
  },
};
