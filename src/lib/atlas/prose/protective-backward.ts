import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['backward parachute', 'backward propping'],
  sides: 'Backward push; both arms, or one arm with trunk rotation.',
  position: 'Seated on the floor, legs forward, hands free.',
  stimulus: 'A slow push backward at the chest.',
  positive: 'Arms reach behind with hands open, or the trunk turns and one arm props.',
  pitfalls: [
    'No hand ready to catch: always guard from behind.',
    'Pushing faster than the infant can react.',
  ],
  purpose: 'The last of the propping reactions; protects the back of the head.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'Missing after independent sitting is noted.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A turn to one side only is noted.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    back: 'Arms reach behind; many infants turn the trunk and use one arm.',
  },
};
