import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['deglutition reflex'],
  sides: 'Midline.',
  position: 'Held or semi-reclined for a feed.',
  stimulus: 'Fluid or saliva reaching the back of the tongue and pharynx.',
  positive:
    'A swallow follows the suck, without cough, colour change or pooling, in step with breathing.',
  pitfalls: [
    'Testing with fluid when aspiration is suspected; leave to a feeding specialist.',
    'Watching the mouth only and missing breathing pauses or colour change.',
  ],
  purpose:
    'Moves food safely and protects the airway; begins well before birth by swallowing amniotic fluid.',
  reported: {
    persistence: {
      text: 'Lifelong; it does not integrate.',
      sources: ['lally-valentine'],
      basis: 'read',
    },
    absence: {
      text: 'Fetal swallowing patterns differed from controls in fetuses at risk of later feeding disorder. In 24 preterm infants swallows fell mostly in breathing pauses at 32-33 weeks and at the end of inspiration after 35, so coordination is still immature before then.',
      sources: ['miller-2003', 'mizuno-2003'],
      basis: 'read',
    },
    asymmetry: {
      text: 'Not applicable.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
