import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['suck reflex', 'suck-swallow reflex'],
  sides: 'Midline.',
  position: 'Supine or semi-reclined, head in midline.',
  stimulus: 'A clean gloved fingertip or teat on the front third of the tongue or the hard palate.',
  positive:
    'Rhythmic bursts of sucking with a groove along the tongue and a pull felt on the finger, with pauses between bursts.',
  pitfalls: [
    'Judging after a full feed.',
    'Placing the finger far back so that a gag is provoked instead.',
    'Scoring presence only: rhythm, strength and ability to keep going matter as much.',
  ],
  purpose: 'Feeding; non-nutritive sucking also settles the infant.',
  reported: {
    persistence: {
      text: 'Reflex sucking gives way to voluntary sucking. Continued obligatory sucking is taught as delaying chewing and oral exploration (recalled from teaching).',
      sources: ['beststart'],
      basis: 'mixed',
    },
    absence: {
      text: 'In preterm infants, not being able to keep sucking going at about 46 weeks PMA was associated with poorer neurodevelopment at 2 years in one cohort of 52. Weak sucking is also common in sick newborns.',
      sources: ['wolthuis-2015', 'sohn-2011'],
      basis: 'read',
    },
    asymmetry: {
      text: 'One-sided pull suggests facial or oral asymmetry.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {},
};
