import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['downward parachute', 'leg parachute', 'placing-down reaction'],
  sides: 'Both legs; compare them.',
  position: 'Held upright in the air, facing away.',
  stimulus: 'Lower quickly toward a firm surface.',
  positive: 'Legs extend and abduct, and the feet dorsiflex ready to land.',
  pitfalls: [
    'Lowering so far that it becomes a drop.',
    'Testing an infant who is not yet weight bearing.',
    'Confusing it with positive support.',
  ],
  purpose: 'Prepares the legs to take a fall or a landing.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'Not eliciting it in a walking infant is noted; in a healthy cohort more than half could stand before showing it.',
      sources: ['jaffe-1994'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A leg that does not prepare prompts a look for a one-sided problem.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    lowered: 'Hips turn out, ankles dorsiflex.',
  },
};
