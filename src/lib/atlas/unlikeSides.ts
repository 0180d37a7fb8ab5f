/** Why unlike sides are common at the ages of `weight.ts`. Loaded when it is first shown. */
import type { WeightReason } from './absence.ts';

const RIGHTING: readonly WeightReason[] = [
  {
    why: 'Five of 33 healthy infants (15.2 in 100) first righted the head to one side only when held in suspension, and to both a few months later. The reaction began at 3 to 8 months; the eyes were open.',
    sources: ['tachibana-1983'],
    basis: 'read',
  },
];

/** By reflex id, in the order of the spans of `weight.ts`. */
export const UNLIKE_WHY: Readonly<Record<string, readonly WeightReason[]>> = {
  'plantar-response': [
    {
      why: 'The two feet answered differently in 20.7 in 100 healthy infants of 1 to 3 months, 25.3 of 3.1 to 6, 40.3 of 6.1 to 9 and 28.7 of 9.1 to 12 months. In the first week it was 5.4 in 100.',
      sources: ['kumhar-2002', 'gupta-2003'],
      basis: 'read',
    },
  ],
  atnr: [
    {
      why: 'In 20 infants of 4 to 10 weeks the response was least often seen, weakest and shortest on turning the head to the side that the infant preferred. No share of infants is printed.',
      sources: ['liederman-coryell-1981'],
      basis: 'read',
    },
  ],
  'labyrinthine-righting': RIGHTING,
  'optical-righting': RIGHTING,
};
