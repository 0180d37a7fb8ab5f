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
    'A fist, with the thumb in it or not, taken for a grasp: open the hand from its back first, and note the fist by itself.',
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
      text: 'A steady difference raises brachial plexus, clavicle or early one-sided motor disorder (recalled from teaching). A steady hand preference before 12 months is a prompt to refer.',
      sources: ['cp-prompts'],
      basis: 'mixed',
    },
  },
  verified: [
    {
      text: 'The thumb inside the fist is common at first: 125 of 200 healthy term newborns; no longer seen at 1.5 months on average and in none by 7 months. After that age it needs a closer look.',
      sources: ['jaffe-2000'],
      basis: 'read',
    },
    {
      text: 'Hands kept fisted after 4 months are a prompt to refer, and so is a steady hand preference before 12 months.',
      sources: ['cp-prompts'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'left-palm': 'Elbow flexion is slight unless traction is added.',
  },
};
