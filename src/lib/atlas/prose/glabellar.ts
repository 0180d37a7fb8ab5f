import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['blink reflex (tap form)', 'Myerson sign (when it fails to habituate)'],
  sides: 'Midline tap; compare the two eyelids.',
  position: 'Supine, eyes open, head in midline.',
  stimulus: 'A light tap between the eyebrows, from above and out of sight.',
  positive: 'Both eyelids close briefly; the blink fades over the next few taps.',
  pitfalls: [
    'Moving the hand across the eyes, which tests blink to threat.',
    'Tapping too hard.',
    'Counting only the first tap.',
    'Watching the lids alone in a newborn: a tap that draws the head back each time anew, with stiffness, asks for a medical look.',
  ],
  purpose: 'Protects the eye; it stays for life but normally habituates.',
  reported: {
    persistence: {
      text: 'A lifelong reflex. Failure to habituate is the finding of interest in older people (recalled from teaching). In a newborn it is not the blink that matters but the head drawn back, or a flexor spasm, at every tap on the nose: the mark of hyperekplexia.',
      sources: ['garcia-sanchez', 'praveen-2001', 'saini-2020'],
      basis: 'mixed',
    },
    absence: {
      text: 'Absence below about 32 weeks is expected. Absence later, or one lid only, suggests facial nerve weakness, recalled from teaching.',
      sources: ['robinson-1966'],
      basis: 'mixed',
    },
    asymmetry: {
      text: 'One eyelid closing less suggests a facial nerve palsy.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'Taps between the brows until the blink stopped: 2.7 on average (SD 1.2) at 0-2 months, and more with age through early childhood.',
      sources: ['zametkin-1979'],
      basis: 'read',
    },
    {
      text: 'A head-retraction reflex to repeated taps on the nose that does not habituate is looked for in newborns; a flexor spasm at each tap on the bridge of the nose is the clinical mark of hyperekplexia.',
      sources: ['saini-2020', 'praveen-2001'],
      basis: 'read',
    },
  ],
  patternNotes: {},
};
