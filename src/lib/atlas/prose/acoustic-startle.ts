import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['startle reflex', 'startle reaction'],
  sides: 'Midline; sound from behind or overhead.',
  position: 'Supine, quiet or drowsy, head in midline.',
  stimulus: 'A single sudden sound out of sight.',
  positive:
    'A quick blink and general flexor jerk: elbows stay bent and hands stay closed, unlike the Moro spread.',
  pitfalls: [
    'Repeating the sound, since the response habituates within a few trials.',
    'Recording it as a Moro; several dictionaries use the two words as one.',
    'Moving air or the cot, which adds a tactile or vestibular stimulus.',
  ],
  purpose: 'Rapid protective orienting; a mature startle stays for life.',
  reported: {
    persistence: {
      text: 'A damped startle is lifelong. Responses that are exaggerated and do not habituate call for medical review.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'No response to repeated sound prompts a hearing check; fetal and newborn response from about 28 weeks is the basis for that.',
      sources: ['birnholz-1983'],
      basis: 'read',
    },
    asymmetry: {
      text: 'Not usually read for side.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    sound: 'Elbows stay bent and hands stay closed: the contrast with the Moro spread.',
  },
};
