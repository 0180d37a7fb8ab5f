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

export interface UnlikeSides {
  /** First age in months after term, negative before; included. */
  fromMonths: number;
  /** Last age in months after term; included. */
  toMonths: number;
  /** Why, in a sentence or two, with figures as printed. */
  why: string;
  sources: readonly string[];
  basis: 'read' | 'mixed' | 'memory';
}

const RIGHTING: readonly UnlikeSides[] = [
  {
    fromMonths: 3,
    toMonths: 8,
    why: 'Five of 33 healthy infants (15.2 in 100) first righted the head to one side only when held in suspension, and to both a few months later. The reaction began at 3 to 8 months; the eyes were open.',
    sources: ['tachibana-1983'],
    basis: 'read',
  },
];

/** By reflex id; reflexes without such an age are not listed. */
export const UNLIKE_SIDES: Readonly<Record<string, readonly UnlikeSides[]>> = {
  'plantar-response': [
    {
      fromMonths: 1,
      toMonths: 12,
      why: 'The two feet answered differently in 20.7 in 100 healthy infants of 1 to 3 months, 25.3 of 3.1 to 6, 40.3 of 6.1 to 9 and 28.7 of 9.1 to 12 months. In the first week it was 5.4 in 100.',
      sources: ['kumhar-2002', 'gupta-2003'],
      basis: 'read',
    },
  ],
  atnr: [
    {
      fromMonths: 0.9,
      toMonths: 2.3,
      why: 'In 20 infants of 4 to 10 weeks the response was least often seen, weakest and shortest on turning the head to the side that the infant preferred. No share of infants is printed.',
      sources: ['liederman-coryell-1981'],
      basis: 'read',
    },
  ],
  'labyrinthine-righting': RIGHTING,
  'optical-righting': RIGHTING,
};
