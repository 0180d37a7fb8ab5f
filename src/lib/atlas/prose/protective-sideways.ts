import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['sideways parachute', 'lateral propping'],
  sides: 'Tip to each side.',
  position: 'Seated on the floor, legs apart, hands free.',
  stimulus:
    'A push on one shoulder, firm and quick enough to unbalance the infant toward the other side.',
  positive: 'The arm on the falling side reaches out, elbow extended, hand open, and props.',
  pitfalls: [
    'A push too slow or too small to unbalance: a slow tilt tests equilibrium, where no arm is needed.',
    'A push harder than it takes, or no hand ready to catch.',
    'Testing while the infant leans on the arms already.',
    'Confusing the direction: the arm that props is on the side the infant falls to.',
  ],
  purpose: 'Props the infant in sitting and frees one hand.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'Not eliciting it after stable sitting is noted.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A side that never props is a usual early sign of one-sided motor disorder (recalled from teaching). A steady hand preference before 12 months is a prompt to refer.',
      sources: ['cp-prompts'],
      basis: 'mixed',
    },
  },
  verified: [
    {
      text: 'Seated, the child is pushed on the shoulder hard enough to lose balance; the arm opposite the push extends and takes weight on an open hand.',
      sources: ['clinic-2015'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'fall-left':
      'Head and trunk right themselves away from the fall. The right arm may lift as a counterweight.',
  },
};
