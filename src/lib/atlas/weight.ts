/**
 * How much a finding of each reflex tells: whether its absence tells little, and the ages at which unlike
 * sides are common. Why stands in `absence.ts` and `unlikeSides.ts`.
 */

/**
 * Absence tells little where ten or more in a hundred healthy infants of an age at which the sources have
 * it established were counted without it, or where a source says that healthy infants may lack it or that
 * it cannot be elicited reliably. That infants come to a response early or late, and let it go early or
 * late, is no reason: the windows of the sources have that already.
 */
const TELLS_LITTLE: ReadonlySet<string> = new Set([
  'acoustic-startle',
  'atnr',
  'stnr',
  'tlr',
  'perez',
  'crossed-extension',
  'extensor-thrust',
  'plantar-response',
  'babkin',
  'snout',
  'crawling',
  'swimming',
  'positive-support',
  'stepping',
  'placing-leg',
  'placing-arm',
  'amphibian',
  'protective-stepping',
]);

/** Ours: the chance that a response that is there is not elicited. */
export const MISSED = 0.1;
export const MISSED_TELLS_LITTLE = 0.5;

export interface Absence {
  tells: 'tells' | 'tells-little';
  /** The chance that a response that is there is not elicited: greater where absence tells little. */
  missed: typeof MISSED | typeof MISSED_TELLS_LITTLE;
}

/** How far a response of this reflex that was not elicited counts. */
export const absenceOf = (reflex: string): Absence =>
  TELLS_LITTLE.has(reflex)
    ? { tells: 'tells-little', missed: MISSED_TELLS_LITTLE }
    : { tells: 'tells', missed: MISSED };

/** Ages in months after term, negative before; both included. */
export interface UnlikeSides {
  fromMonths: number;
  toMonths: number;
}

/**
 * The ages at which unlike sides of a response are common in healthy infants, so that a difference
 * between the sides alone weighs little.
 *
 * Common means ten or more in a hundred as printed or, where no share is printed, a difference found
 * in a group of healthy infants. Left out are differences that only an instrument or a film shows and
 * that no examiner would note: strength of the palmar grasp over ten measured pulls (34 in 100 newborns
 * had a stronger hand in one study, none at group level in another of 150), onset of the arms in the
 * Moro by milliseconds, smoothness of single steps. A reflex without an entry has no such age.
 */
export const UNLIKE_SIDES: Readonly<Record<string, readonly UnlikeSides[]>> = {
  'plantar-response': [{ fromMonths: 1, toMonths: 12 }],
  atnr: [{ fromMonths: 0.9, toMonths: 2.3 }],
  'labyrinthine-righting': [{ fromMonths: 3, toMonths: 8 }],
  'optical-righting': [{ fromMonths: 3, toMonths: 8 }],
};
