import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['palmar-mandibular reflex', 'hand-mouth reflex'],
  sides: 'Both palms at once. Pressing one palm gives a weaker, one-sided form.',
  position: 'Supine, awake, head in midline, best before a feed.',
  stimulus: 'Firm thumb pressure in both palms together.',
  positive:
    'The mouth opens; the head often flexes or returns to midline, the eyes may close and the elbows flex.',
  pitfalls: [
    'Pressing fingers rather than palms, which gives a grasp.',
    'Testing after a feed or in sleep.',
    'Pressing too lightly: it is pressure, not touch, that elicits it.',
    'Head turned to one side at the start.',
  ],
  purpose: 'Early link between hand and mouth, ahead of eye-hand-mouth coordination.',
  reported: {
    persistence: {
      text: 'A marked response in the fourth or fifth month, or any response after five months, is regarded as abnormal and as a reason to observe. A response at 3 months predicted late sitting and walking in one cohort of 107.',
      sources: ['futagi-2013', 'surowinska-2023'],
      basis: 'read',
    },
    absence: {
      text: 'Some healthy newborns never show it, so absence early on is not abnormal.',
      sources: ['futagi-2013'],
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
      text: 'Elicited by pressure applied to both palms at once.',
      sources: ['payne-isaacs'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'both-palms':
      'Eyes may close. Fingers may curl round the thumbs, which is the palmar grasp. Head may also turn back to midline.',
  },
};
