/** What the state of an infant, the time and the way of testing have been reported to change. */
export interface StateEffect {
  /** A reflex id, or `any-reflex`. */
  reflex: string;
  effect: string;
  n: number | null;
  population: string;
  source: string;
  basis: 'read';
  note?: string;
}

export const STATES: readonly StateEffect[] = [
  {
    reflex: 'dolls-eye',
    effect: 'Awake, all answered a rotation of the whole body; the same infants asleep did not.',
    n: 64,
    population: 'newborns at term',
    source: 'lawrence-1953',
    basis: 'read',
  },
  {
    reflex: 'stepping',
    effect:
      'The more aroused, the more steps. Among calmer infants those heavier for their length stepped less.',
    n: null,
    population: 'newborns',
    source: 'thelen-1982',
    basis: 'read',
  },
  {
    reflex: 'sucking',
    effect:
      'Normal sucking and plantar responses went with a better mental state, more weeks of gestation and more weight; the Moro response did not.',
    n: 63,
    population: 'newborns in intensive care',
    source: 'sohn-2011',
    basis: 'read',
  },
  {
    reflex: 'acoustic-startle',
    effect: 'The rate of habituation did not differ between fetuses quiet and active at first.',
    n: 32,
    population: 'fetuses at term',
    source: 'vanheteren-2001',
    basis: 'read',
  },
  {
    reflex: 'any-reflex',
    effect:
      'Before 20 hours after birth fewer newborns are in the normal range (odds ratio 1.12, 95 percent interval 1.02 to 1.23, n 148); from then on nothing more changes (n 176). The score of reflexes is among what changes.',
    n: 324,
    population: 'newborns within 48 hours of birth',
    source: 'xu-2011',
    basis: 'read',
    note: 'That the odds ratio is per hour is our reading of the abstract.',
  },
  {
    reflex: 'babkin',
    effect:
      'In infants under 2 months the response was stronger on average when more than an hour had passed since feeding.',
    n: 258,
    population: 'healthy infants; the number under 2 months is not printed',
    source: 'futagi-1987',
    basis: 'read',
  },
  {
    reflex: 'any-reflex',
    effect:
      'Which side the head is kept to depends strongly on the state; most keep it to the right, lying and half upright.',
    n: null,
    population: 'newborns',
    source: 'ronnqvist-2000',
    basis: 'read',
  },
];
