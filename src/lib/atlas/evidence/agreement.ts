/** How far examiners agree on a response, and how far it stays the same when it is tested again. */
export interface Agreement {
  /** A reflex id, or `any-reflex` for a whole examination. */
  reflex: string;
  what: string;
  between: 'examiners' | 'tests' | 'examiners-and-tests' | 'methods' | 'months';
  measure: 'kappa' | 'intraclass-correlation' | 'correlation' | 'percent-agreement' | 'not-named';
  /** As printed; per cent for shares. A range where items differ. */
  value: { low: number; high: number } | null;
  /** Where the source prints words or bounds instead of figures. */
  words?: string;
  /** 95 %, where printed. */
  interval?: { low: number; high: number };
  /** How many examined, where printed. */
  examiners?: number;
  n: number;
  population: string;
  source: string;
  basis: 'read';
  note?: string;
}

export const AGREEMENT: readonly Agreement[] = [
  {
    reflex: 'moro',
    what: 'Moro response in an examination for encephalopathy, under 6 hours old',
    between: 'examiners',
    measure: 'kappa',
    value: null,
    words: 'fair to poor at 32-34 weeks of gestation, excellent at 35 weeks or more',
    n: 102,
    population: 'newborns of 32-36 weeks in intensive care',
    source: 'pavageau-2020',
    basis: 'read',
  },
  {
    reflex: 'any-reflex',
    what: 'the other items of that examination, but for tone',
    between: 'examiners',
    measure: 'kappa',
    value: null,
    words: 'above 0.8 among experts, above 0.7 among all',
    n: 102,
    population: 'newborns of 32-36 weeks in intensive care',
    source: 'pavageau-2020',
    basis: 'read',
    note: 'The abstract names only the Moro response and tone; which other items there are was not seen.',
  },
  {
    reflex: 'palmar-grasp',
    what: 'palmar grasp and Moro response',
    between: 'examiners',
    measure: 'percent-agreement',
    value: null,
    words:
      'the greatest agreement with an expert among the primitive reflexes, in one pair (p < .01)',
    n: 20,
    population: 'healthy preterm newborns',
    source: 'alves-2018',
    basis: 'read',
  },
  {
    reflex: 'any-reflex',
    what: 'a movement assessment at 4 months, all sections',
    between: 'examiners-and-tests',
    measure: 'correlation',
    value: { low: 0.72, high: 0.76 },
    n: 53,
    population: '27 infants born at term, 26 preterm',
    source: 'harris-1984',
    basis: 'read',
    note: 'Between examiners .72, on retest .76; single sections, that of primitive reflexes among them, ran from poor to good.',
  },
  {
    reflex: 'any-reflex',
    what: 'items of a motor screening test: reflexes, righting, parachute, tilting',
    between: 'examiners',
    measure: 'percent-agreement',
    value: { low: 79, high: 98 },
    n: 60,
    population: 'healthy children of 1-16 months, from video',
    source: 'stuberg-1989',
    basis: 'read',
  },
  {
    reflex: 'any-reflex',
    what: 'the same items within a week',
    between: 'tests',
    measure: 'percent-agreement',
    value: { low: 80, high: 100 },
    n: 43,
    population: 'healthy children of 1-16 months',
    source: 'stuberg-1989',
    basis: 'read',
    note: 'Kappa was above .75 for 82 percent of the items.',
  },
  {
    reflex: 'any-reflex',
    what: 'a profile of primitive reflexes',
    between: 'examiners',
    measure: 'not-named',
    value: { low: 0.88, high: 0.88 },
    n: 103,
    population: 'infants under 1.5 kg at birth, at 4 months corrected',
    source: 'marquis-1984-abs',
    basis: 'read',
    note: 'n is the cohort; how many were tested twice is not printed.',
  },
  {
    reflex: 'any-reflex',
    what: 'a neurological examination of preterm infants',
    between: 'examiners',
    measure: 'intraclass-correlation',
    value: { low: 0.391, high: 0.556 },
    n: 34,
    population: 'preterm infants up to 37 weeks of gestation',
    source: 'gagnon-2012',
    basis: 'read',
  },
  {
    reflex: 'any-reflex',
    what: 'the same examination on the next day',
    between: 'tests',
    measure: 'intraclass-correlation',
    value: { low: 0.493, high: 0.592 },
    n: 34,
    population: 'preterm infants up to 37 weeks of gestation',
    source: 'gagnon-2012',
    basis: 'read',
  },
  {
    reflex: 'traction',
    what: 'head lag and head righting on pull-to-sit, and two other items, measured from video by computer',
    between: 'methods',
    measure: 'intraclass-correlation',
    value: { low: 0.77, high: 0.997 },
    n: 51,
    population: '29 infants born very preterm, 22 at term, at term age',
    source: 'cameron-2006',
    basis: 'read',
    note: 'One rater measured twice. The preterm infants, at low risk, had less head lag than those born at term (p .005).',
  },
  {
    reflex: 'landau',
    what: 'posture from one month to the next',
    between: 'months',
    measure: 'percent-agreement',
    value: null,
    words: 'fewer than 10 percent of infants went back',
    n: 30,
    population: 'healthy infants of 2-11 months',
    source: 'cupps-1976',
    basis: 'read',
  },
  {
    reflex: 'acoustic-startle',
    what: 'watching for a response to sound',
    between: 'methods',
    measure: 'not-named',
    value: null,
    words: 'the judgement is changed by knowing when the sound came',
    n: 144,
    population: 'healthy newborns',
    source: 'ling-1970',
    basis: 'read',
  },
];
