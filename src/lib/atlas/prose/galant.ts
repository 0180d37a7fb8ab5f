import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['truncal incurvation reflex', 'trunk incurvation', 'spinal Galant'],
  sides: 'Stroke each side of the spine separately.',
  position: 'Prone over the hand or on the surface, head in midline, arms free.',
  stimulus:
    'A fingertip stroke down one side of the back, a finger-breadth or two from the spine, from shoulder or ribs to pelvis.',
  positive:
    'The trunk curves with its hollow on the stroked side and the pelvis swings toward that side; the hip there may flex and lift. Read the pelvis as well as the trunk.',
  pitfalls: [
    'Stroking over the spine itself, which tests Perez.',
    'Scratching hard enough to hurt, which adds a general withdrawal.',
    'Comparing sides after the infant has habituated.',
    'Letting the legs or feet rest on the surface, which holds the pelvis.',
  ],
  purpose:
    'An early lateral trunk pattern; sometimes said to help movement through the birth canal.',
  reported: {
    persistence: {
      text: 'In one cohort an abnormal response at 3 months was strongly associated with not crawling on time. Retention was a feature of athetoid cerebral palsy in a high-risk cohort. In 458 typical infants and 159 with later cerebral palsy or intellectual disability its course by age differed between groups.',
      sources: ['surowinska-2023', 'zafeiriou-1995', 'futagi-1992'],
      basis: 'read',
    },
    absence: {
      text: 'Weak in some healthy newborns; complete absence is used by some examiners as a sign of spinal level problems.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A lasting side difference prompts a look at the hip, spine and one-sided motor function.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'With the infant in ventral suspension and the feet clear of the bed, the hips move toward the side that was stroked.',
      sources: ['stanford-galant'],
      basis: 'read',
    },
    {
      text: 'That the hip of that side also flexes is taught (no source read).',
      sources: [],
      basis: 'memory',
    },
  ],
  patternNotes: {
    'left-side':
      'Hollow on the stroked (left) side; pelvis swings to the left. The left leg may flex and the right extend.',
  },
};
