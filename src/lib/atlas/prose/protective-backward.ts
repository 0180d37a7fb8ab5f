import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['backward parachute', 'backward propping'],
  sides: 'Backward push; both arms, or one arm with trunk rotation.',
  position: 'Seated on the floor, legs forward, hands free.',
  stimulus: 'A push backward at the chest or shoulders, firm and quick enough to unbalance.',
  positive: 'Arms reach behind with hands open, or the trunk turns and one arm props.',
  pitfalls: [
    'No hand ready to catch: always guard from behind.',
    'Pushing faster than the infant can react.',
    'A push too slow or too small to unbalance: a slow tilt tests equilibrium, where no arm is needed.',
  ],
  purpose: 'The last of the propping reactions; protects the back of the head.',
  reported: {
    persistence: {
      text: 'Stays for life.',
      sources: ['dreeben-2008'],
      basis: 'read',
    },
    absence: {
      text: 'Not eliciting it after independent sitting is noted.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'A turn to one side only is noted.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'Seated, the child is pushed backward hard enough to lose balance over the base of support; the arms extend behind and take weight.',
      sources: ['clinic-2015'],
      basis: 'read',
    },
  ],
  patternNotes: {
    back: 'Arms reach behind; many infants turn the trunk and use one arm.',
  },
};
