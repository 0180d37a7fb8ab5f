import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['search reflex', 'four-point reflex (when all four lip points are tried)'],
  sides:
    'Stroke each mouth corner, then the middle of the upper and of the lower lip. Corners should be equal.',
  position: 'Supine, head in midline, awake and calm, ideally shortly before a feed.',
  stimulus:
    'A light fingertip stroke from the corner of the mouth outward across the cheek; repeat at the other corner and at each lip.',
  positive:
    'The head turns toward the touched corner and the mouth opens; with an upper-lip touch the head tips back, with a lower-lip touch the jaw drops.',
  pitfalls: [
    'Testing a just-fed or sleepy infant, who may turn away or not respond.',
    'Touching both cheeks at once while steadying the head.',
    'Pressing instead of stroking, which can provoke a turn away.',
  ],
  purpose:
    'Helps the newborn find and take hold of the nipple; an early organiser of head turning in midline.',
  reported: {
    persistence: {
      text: 'Accepted in sleep until 7-8 months by one source. A brisk waking response past the usual window is taught as getting in the way of free head control and mature oral play (recalled from teaching).',
      sources: ['pediatriceducation-2020'],
      basis: 'mixed',
    },
    absence: {
      text: 'A response that is weak or not elicited in the newborn is taught as non-specific: prematurity, a recent feed, sedation or general depression of the nervous system (recalled from teaching). At term age low-risk preterm infants rooted in a less sustained way than term newborns.',
      sources: ['majnemer-1992'],
      basis: 'mixed',
    },
    asymmetry: {
      text: 'A steady side difference prompts a look for facial or cranial nerve injury on the quiet side.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
