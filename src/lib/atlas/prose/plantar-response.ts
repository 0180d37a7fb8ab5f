import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['Babinski reflex', 'Babinski sign (older child and adult)', 'plantar reflex'],
  sides:
    'Each foot separately. Unequal sides were common in healthy term infants of 1 to 12 months (20 to 40 percent, most at 6 to 9 months; 1281 infants in India, Kumhar et al. 2002), and rare in the first week (5 percent of observations of 256 newborns): from the second month on asymmetry alone carries little weight here.',
  position: 'Supine, relaxed, leg extended, head in midline.',
  stimulus:
    'A blunt stroke along the outer sole from heel toward the little toe and across the ball.',
  positive: 'In the infant the big toe lifts and the other toes fan; later the toes turn down.',
  pitfalls: [
    'Pressing the ball of the foot, which brings out the plantar grasp and turns the toes down.',
    'Too sharp a stroke, which brings out withdrawal of the whole leg.',
    'Counting only the first flick of the toe.',
  ],
  purpose:
    'Part of the flexor synergy of the leg; the downward adult form appears as descending control matures.',
  reported: {
    persistence: {
      text: 'An upgoing toe after about 2 years is treated as a sign of damage to the corticospinal pathway.',
      sources: ['adam-babinski'],
      basis: 'read',
    },
    absence: {
      text: 'Either direction may be normal in the newborn: published rates vary mainly with technique, so the sign alone has limited value then.',
      sources: ['babinski-newborn-1976', 'vangijn-1977'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A clear and repeatable side difference is worth noting.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'left-sole': 'Big toe extends, other toes fan. With a stronger stroke the leg also flexes.',
  },
};
