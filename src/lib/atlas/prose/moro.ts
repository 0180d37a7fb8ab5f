import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['Moro response', 'embrace reflex'],
  sides: 'One midline stimulus, but each arm is read separately for equality.',
  position: 'Supine or semi-reclined on the forearm, head supported in midline, hands open.',
  stimulus:
    'The head support is dropped a short way (about 2-3 cm, or some 20-30 degrees) and caught.',
  positive:
    'Arms spread and straighten with the hands open, then come back in an embrace; legs may extend then flex, and a cry is usual.',
  pitfalls: [
    'Dropping too far or too roughly, or letting the neck take the load.',
    'Head turned, which makes the arms unequal.',
    'A fisted hand or a held object on one side, which mimics asymmetry.',
    'Using noise, which tests startle.',
    'In preterm infants the second (embrace) phase may be missing and is not a fault.',
  ],
  purpose:
    'Reaction to sudden loss of head support; thought to have helped an infant cling to its carrier.',
  reported: {
    persistence: {
      text: 'Strong responses still present at 4 months corrected went along with motor delay in very low birth weight infants; strong combined reflex scores at 4 months correlated with 12-month outcome.',
      sources: ['marquis-1984', 'marquis-1984-abs'],
      basis: 'read',
    },
    absence: {
      text: 'Absence in the newborn period and early infancy is regarded as an important sign of a compromised infant, from many causes. At term age infants born before 35 weeks had a weaker response than term newborns.',
      sources: ['futagi-2012', 'forslund-1983'],
      basis: 'read',
    },
    asymmetry: {
      text: 'A one-sided response suggests a clavicle fracture, arm nerve injury at birth, or an early one-sided motor disorder.',
      sources: ['drhull', 'brown-medpeds'],
      basis: 'read',
    },
  },
  patternNotes: {
    'head-drop': 'Out, then in. Legs vary. The in phase may be missing in preterm infants.',
  },
};
