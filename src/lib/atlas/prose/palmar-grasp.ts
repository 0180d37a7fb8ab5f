import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['hand grasp', 'grasp reflex', 'Darwinian reflex (older term)'],
  sides: 'Each hand separately, then compared.',
  position: 'Supine, head in midline, arms partly flexed.',
  stimulus: 'A finger brought in from the little-finger side and pressed lightly across the palm.',
  positive: 'All fingers close around the examiner finger and tighten when a gentle pull is added.',
  pitfalls: [
    'Touching the back of the hand, which opens it.',
    'Head turned to one side, so that a tonic neck posture loads one hand.',
    'Coming in from the thumb side.',
  ],
  purpose: 'Clinging in evolutionary terms; later gives way to voluntary hold and release.',
  reported: {
    persistence: {
      text: 'Prolonged retention was a feature of infants who later had spastic cerebral palsy in one high-risk cohort of 204. Association only.',
      sources: ['zafeiriou-1995'],
      basis: 'read',
    },
    absence: {
      text: 'The reflex is present in all well preterm infants from about 25 weeks, so absence draws attention to the nervous system or to a local arm or nerve problem. At term age low-risk preterm infants held it for less time than term newborns.',
      sources: ['allen-capute-1986', 'futagi-2012', 'majnemer-1992'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A steady difference raises brachial plexus, clavicle or early one-sided motor disorder.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'left-palm': 'Elbow flexion is slight unless traction is added.',
  },
};
