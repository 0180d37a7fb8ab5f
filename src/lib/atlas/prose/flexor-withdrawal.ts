import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['withdrawal reflex', 'flexor reflex of the leg'],
  sides: 'Each foot separately; compare the speed and completeness.',
  position: 'Supine with legs extended, or seated supported.',
  stimulus: 'A brief flick or scratch of the sole with a fingernail; never a pin.',
  positive:
    'Toes extend, the ankle dorsiflexes and the whole leg flexes at hip and knee, drawing away from the touch.',
  pitfalls: [
    'Tickling instead of a brief, distinct touch.',
    'Using a pin: it hurts, may break the skin and is not needed.',
    'Testing an infant held with the leg already flexed.',
    'Repeating until the infant habituates or learns to pull away.',
  ],
  purpose: 'Moves the foot from harm; the uncontrolled form gives way to a measured movement.',
  reported: {
    persistence: {
      text: 'Uncontrolled flexion past two months is described as one possible sign of delayed reflex maturation.',
      sources: ['fiorentino-1963'],
      basis: 'read',
    },
    absence: {
      text: 'Weaker at term age in infants born before 35 weeks than in term newborns. Absence on one side suggests nerve or spinal cord problems on that side (recalled from teaching).',
      sources: ['forslund-1983'],
      basis: 'mixed',
    },
    asymmetry: {
      text: 'A lasting difference suggests a peripheral nerve or cord lesion.',
      sources: [],
      basis: 'memory',
    },
  },
  verified: [
    {
      text: 'Sensation in a newborn is tested by flicking the palm or sole with a finger; a pin is not used.',
      sources: ['bates'],
      basis: 'read',
    },
    {
      text: 'The threshold of withdrawal to calibrated hairs on the foot was about 1 g at 41 weeks and about a quarter of that at 29 weeks. Up to 35 weeks repetition lowered it; later the response habituated.',
      sources: ['andrews-1994'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'left-foot': 'Toes extend, the ankle dorsiflexes, knee and hip flex.',
  },
};
