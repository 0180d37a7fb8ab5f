import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['STNR', 'symmetric tonic neck reflex'],
  sides: 'Midline, two variants.',
  position: 'On hands and knees, or prone over the examiner knees.',
  stimulus: 'Flex the head, then extend it, slowly, holding each for some seconds.',
  positive:
    'Head flexed: arms flex and legs extend. Head extended: arms extend and legs flex, so the infant sits back on the heels.',
  pitfalls: [
    'Testing before the infant can bear weight on the arms; many infants show little or nothing.',
    'Moving trunk and head together.',
    'Letting a head turn creep in, which adds the asymmetrical pattern.',
  ],
  purpose:
    'Links head position with arm support; a passing step toward hands and knees, which must then be dissociated to crawl.',
  reported: {
    persistence: {
      text: 'Described as affecting hands-and-knees crawling when retained. Higher combined residual scores (ATNR, STNR, TLR) went with lower motor efficiency among 112 healthy 4-6 year olds (correlation -0.33).',
      sources: ['kumc-2012', 'pecuch-2021'],
      basis: 'read',
    },
    absence: {
      text: 'Not easily seen or elicited in typical infants; absence is not treated as abnormal (the second part recalled from teaching).',
      sources: ['wikipedia-stnr'],
      basis: 'mixed',
    },
    asymmetry: {
      text: 'Asymmetry suggests an added ATNR or a one-sided motor disorder.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'neck-flexed': 'Arms flex, legs extend.',
    'neck-extended': 'Arms extend, legs flex; the hips sink toward the heels.',
  },
};
