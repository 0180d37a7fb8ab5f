import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['toe grasp', 'foot grasp'],
  sides: 'Each foot separately.',
  position: 'Supine, hips and knees relaxed, head in midline.',
  stimulus: 'A thumb pressed against the ball of the foot just behind the toes.',
  positive: 'All toes curl down and hold while the pressure lasts.',
  pitfalls: [
    'Stroking the sole instead of pressing, which tests the plantar response.',
    'Pressing the heel or arch.',
    'A light touch, which is not pressure and may bring out the plantar response instead.',
    'Testing in standing, where body weight confounds the result.',
  ],
  purpose: 'Counterpart of the hand grasp; fades as the foot takes weight in standing and walking.',
  reported: {
    persistence: {
      text: 'Longer retention was seen in the athetoid cerebral palsy group of a high-risk cohort.',
      sources: ['zafeiriou-1995'],
      basis: 'read',
    },
    absence: {
      text: 'Unusually, a response that is weak or not elicited in the first months is the finding that matters: of 93 such infants in one series 75 later had cerebral palsy, mostly spastic. Absence from 3 months on was linked to spastic cerebral palsy.',
      sources: ['futagi-suzuki-1999', 'zafeiriou-2000'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A one-sided loss is noted with one-sided motor disorder or local nerve problems.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'Elicited by pressing a thumb against the sole just behind the toes.',
      sources: ['futagi-2012'],
      basis: 'memory',
    },
  ],
  patternNotes: {},
};
