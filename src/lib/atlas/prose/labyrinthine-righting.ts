import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['labyrinthine righting reaction', 'vestibular head righting'],
  sides: 'Tip to each side, then forward and back, eyes covered.',
  position: 'Held upright, or prone or supine in suspension, eyes covered.',
  stimulus: 'Tip the body to one side, slowly.',
  positive:
    'The head returns toward vertical and the face toward upright, whichever way the body is tipped.',
  pitfalls: [
    'Leaving the eyes open, which adds optical righting.',
    'Tipping fast, which adds startle.',
    'Holding the head still with the hand.',
  ],
  purpose: 'Keeps the face upright in space without using vision.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'Late head righting is read with the rest of motor development.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'In 33 healthy infants, righting in suspension appeared when rolling did, and one-sided righting went with rolling the other way. Eyes were not covered in that study.',
      sources: ['tachibana-1983'],
      basis: 'read',
    },
  },
  patternNotes: {
    'tip-left': 'Head moves toward vertical, against the tip.',
  },
};
