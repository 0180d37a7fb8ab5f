import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['staggering reaction', 'stepping strategy'],
  sides: 'Pushed in each direction; watch which foot steps.',
  position: 'Standing, hands free, guarded.',
  stimulus: 'A small push that moves the body beyond the feet.',
  positive: 'A foot steps to make a new base of support.',
  pitfalls: ['Testing an infant who cannot yet stand alone.', 'Not guarding.'],
  purpose: 'Keeps the infant up once walking has begun.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'In the first two weeks of walking children rarely step to recover; the step becomes effective after 3-6 months of walking.',
      sources: ['roncesvalles-2000'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A foot that never steps is noted.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'push-left': 'The left foot steps out sideways.',
  },
};
