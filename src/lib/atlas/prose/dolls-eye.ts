import type { ReflexProse } from '../types.ts';

export const prose: ReflexProse = {
  synonyms: ['oculocephalic reflex', 'vestibulo-ocular reflex (newborn test)'],
  sides: 'Turn the head each way; both eyes should move together.',
  position: 'Supine or held facing the examiner, awake, eyes open.',
  stimulus: 'A gentle turn of the head to one side (and nod up or down).',
  positive: 'The eyes lag behind and drift the opposite way to the head turn before coming back.',
  pitfalls: [
    'Turning the head in an infant with a suspected neck injury.',
    'An infant who already fixes and follows will override it.',
    'Turning too slowly.',
  ],
  purpose: 'Holds gaze steady while the head moves; replaced by visual fixation.',
  reported: {
    persistence: {
      text: 'In 325 healthy term babies it was suppressed in three quarters by 11.5 weeks and in over 95 percent by 20 weeks; lateness tracked visual maturation.',
      sources: ['snir-2010'],
      basis: 'read',
    },
    absence: {
      text: 'Absence at birth or a side difference points to brainstem or eye-muscle nerve problems.',
      sources: [],
      basis: 'memory',
    },
    asymmetry: {
      text: 'Unequal eye movement suggests an eye-muscle palsy.',
      sources: [],
      basis: 'memory',
    },
  },
  patternNotes: {
    'head-left': 'Eyes lag to the side opposite the turn, then come back.',
  },
};
