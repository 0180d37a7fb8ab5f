import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['startle reflex', 'startle reaction'],
  sides: 'Midline; sound from behind or overhead.',
  position: 'Supine, quiet or drowsy, head in midline.',
  stimulus: 'A single sudden sound out of sight.',
  positive:
    'Sources describe two responses. A blink and a general flexor jerk: elbows flexed, hands closed. Or, as widely taught: arms extended and abducted, hands open, then arms flexed and drawn across, with a cry, much like a Moro. Record which was seen.',
  pitfalls: [
    'Repeating the sound, since the response habituates within a few trials.',
    'Recording it as a Moro; several dictionaries use the two words as one.',
    'Startling an infant who is ill or not yet stable.',
    'Passing over a startle that is exaggerated or does not fade with repetition, with stiffness or a pause in breathing: it asks for a medical look.',
    'Moving air or the cot, which adds a tactile or vestibular stimulus.',
  ],
  purpose: 'Rapid protective orienting; a mature startle stays for life.',
  reported: {
    persistence: {
      text: 'A damped startle is lifelong (recalled from teaching). A startle that is exaggerated, comes with stiffness and does not habituate is the mark of hyperekplexia, which is rare and treatable and may stop the breathing: it calls for medical review.',
      sources: ['praveen-2001', 'saini-2020'],
      basis: 'mixed',
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
  verified: [
    {
      text: 'The startle reaction is defined by contraction and flexion of the limbs with a blink, and the Moro reflex by sudden extension of the arms, as distinct from it.',
      sources: ['mesh-startle'],
      basis: 'read',
    },
    {
      text: 'A medical dictionary has sudden stimuli bring flexion of hips and knees, fanning of the fingers followed by clenching, and extension of the arms followed by flexion, and uses startle and Moro as one word.',
      sources: ['stedman-startle'],
      basis: 'read',
    },
    {
      text: 'Tables of physical therapy teach extension or abduction of the arms and crying.',
      sources: ['osullivan-handout'],
      basis: 'memory',
    },
  ],
  patternNotes: {
    sound: 'Elbows stay flexed and hands stay closed, in contrast to the abduction of the Moro.',
  },
};
