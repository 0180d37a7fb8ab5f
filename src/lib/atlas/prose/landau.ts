import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['Landau reflex'],
  sides: 'Midline; the second part tests head flexion.',
  position:
    'Held level in ventral suspension: a small infant on one hand under the abdomen, a larger one on both hands round the lower trunk.',
  stimulus: 'Hold the infant in ventral suspension, then tip the head gently forward.',
  positive:
    'The head lifts, back and legs extend; when the head is flexed, the legs flex at the hip.',
  pitfalls: [
    'Holding under the chest, which props the head.',
    'A tired infant, who slumps.',
    'Reading the response before head control at 3 months.',
  ],
  purpose: 'Combined head righting and trunk extension, marking the move out of total flexion.',
  reported: {
    persistence: {
      text: 'Fades or is overridden in the second year.',
      sources: ['wikipedia-landau'],
      basis: 'read',
    },
    absence: {
      text: 'Head lifting was not seen in half of the infants later found to have cerebral palsy at first examination before 13 weeks, but also in 15 percent of the treated and 22 percent of the normalised infants. A limp response is seen with low tone, an arched one with high tone. In 30 healthy infants none hung limply at any visit.',
      sources: ['kanda-1985', 'wikipedia-landau', 'cupps-1976'],
      basis: 'read',
    },
    asymmetry: {
      text: 'Read with other midline tests.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'In the study of 30 healthy infants they lay over the examiner’s hand; all took up neck and spine extension again after the neck had been flexed.',
      sources: ['cupps-1976'],
      basis: 'read',
    },
    {
      text: 'Both hands for a larger infant: common practice, no source.',
      sources: ['common-practice'],
      basis: 'memory',
    },
  ],
  patternNotes: {
    'prone-suspension':
      'By about 6 months. At 3 months the head lifts to the line of the trunk, later above it, then back and legs extend.',
    'head-bent': 'Extensor tone drops and the hips flex.',
  },
};
