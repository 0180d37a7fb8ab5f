import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['neck righting reflex', 'log roll response'],
  sides: 'Turn to each side.',
  position: 'Supine, head in midline, arms free.',
  stimulus: 'Turn the head slowly to one side and hold.',
  positive:
    'The whole trunk follows the head as one piece, so the infant log-rolls toward that side.',
  pitfalls: [
    'Mistaking a shoulder-first segmental roll for the whole-body roll.',
    'Turning the trunk rather than the head.',
  ],
  purpose:
    'Begins rolling; must soften into a segmental roll for dressing, rolling and getting up.',
  reported: {
    persistence: {
      text: 'A block roll that stays past the first half-year is described as delaying segmental rolling.',
      sources: [],
      basis: 'memory',
    },
    absence: {
      text: 'Absence in the newborn is common before about 34 weeks.',
      sources: ['robinson-1966'],
      basis: 'read',
    },
    asymmetry: {
      text: 'One side rolling more than the other may reflect head preference.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'head-left': 'Trunk follows as one block; limbs follow the trunk.',
  },
};
