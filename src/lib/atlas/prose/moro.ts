import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['Moro response', 'embrace reflex'],
  sides: 'One midline stimulus, but each arm is read separately for equality.',
  position: 'Supine or semi-reclined on the forearm, head supported in midline, hands open.',
  stimulus:
    'The head support is dropped a short way (about 2-3 cm, or some 20-30 degrees) and caught; or by arm release.',
  positive:
    'Arms abduct and extend with the hands open, then come back in an embrace; legs may extend then flex, and a cry is usual.',
  pitfalls: [
    'Dropping too far or too roughly, or letting the neck take the load.',
    'Head turned, which makes the arms unequal.',
    'A fisted hand or a held object on one side, which mimics asymmetry.',
    'Using noise, which tests startle.',
    'Arm release with an arm that may be injured, or with the head lifted off the surface.',
    'Startling an infant who is ill or not yet stable: a preterm infant in intensive care is not startled to see a reflex.',
    'Taking epileptic spasms for a Moro: arms flung out, for a second or two, in runs, without a trigger, often on waking, and mostly from 3 months on, when the Moro is fading. They need a physician the same day; a short film helps.',
    'Waiting for it to fade with repetition: the Moro does not, the startle does. An exaggerated Moro, at the least touch or with stiffness, asks for a medical look.',
    'In preterm infants the second (embrace) phase may not be seen, and this is not abnormal.',
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
  verified: [
    {
      text: 'Spasms can look like a Moro: an outward movement of the arms of one or two seconds, again and again within a short time, not in answer to a stimulus; they begin mostly between 3 and 12 months. They cluster around waking and need same-day assessment.',
      sources: ['lebonheur-spasms', 'childrens-spasms', 'dftb-spasms'],
      basis: 'read',
    },
    {
      text: 'In a survey of parents of 100 infants with spasms, 29 were seen within a week by someone who named them; half waited 24.5 days or more, and longer where the parents’ first language was another.',
      sources: ['assist-2017'],
      basis: 'read',
    },
    {
      text: 'The Moro response does not lessen with repeated stimulation, as the startle does.',
      sources: ['wikipedia-moro'],
      basis: 'read',
    },
    {
      text: 'An exaggerated Moro, by a low threshold or excessive clutching, is often seen in newborns with moderate hypoxic-ischaemic encephalopathy.',
      sources: ['wikipedia-moro'],
      basis: 'read',
    },
    {
      text: 'Arm release: with the infant supine and the head staying down, both arms are drawn up gently until the shoulders take less weight, and released together. Said to elicit little in preterm infants, whose arms resist less.',
      sources: ['physiopedia-moro'],
      basis: 'read',
    },
    {
      text: 'A neurological assessment destabilised heart rate, colour and behaviour in 36 preterm and 36 term newborns, more in the preterm. In medically stable infants of 29-32 weeks handling within an assessment disturbed less than nursing care did.',
      sources: ['sweeney-2013', 'allinson-2017'],
      basis: 'read',
    },
  ],
  patternNotes: {
    'head-drop': 'Out, then in. Legs vary. The in phase may not be seen in preterm infants.',
  },
};
