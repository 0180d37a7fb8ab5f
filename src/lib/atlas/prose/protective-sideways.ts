import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['sideways parachute', 'lateral propping'],
  sides: 'Tip to each side.',
  position: 'Seated on the floor, legs apart, hands free.',
  stimulus: 'A slow push on one shoulder, so the infant tips to the other side.',
  positive: 'The arm on the falling side reaches out, elbow straight, hand open, and props.',
  pitfalls: [
    'Pushing hard or fast.',
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
      text: 'Missing after stable sitting is noted.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A side that never props is a usual early sign of one-sided motor disorder.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'fall-left':
      'Head and trunk right themselves away from the fall. The right arm may lift as a counterweight.',
  },
};
