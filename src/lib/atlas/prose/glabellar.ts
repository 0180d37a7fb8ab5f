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
  ],
  purpose: 'Protects the eye; it stays for life but normally habituates.',
  reported: {
    persistence: {
      text: 'A lifelong reflex. Failure to habituate is the finding of interest in older people (recalled from teaching).',
      sources: ['garcia-sanchez'],
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
  patternNotes: {},
};
