/** The arms before the legs: the two dissociations with the figure and the order. */
import { months, upTo, view } from './view.ts';

const ORDER = { orders: ['arms-then-legs'] };
const BOTH = ['atnr', 'stnr'];

export const armsLegs = [
  view(BOTH, months(0), { range: upTo(13) }),
  view(BOTH, months(2), { range: upTo(13), figure: 'atnr', lit: 'atnr' }),
  view(BOTH, months(7), { range: upTo(13), figure: 'stnr', lit: 'stnr' }),
  view(BOTH, months(5), { range: upTo(13), ...ORDER }),
  view(BOTH, months(5), { range: upTo(13) }),
  view(['atnr', 'palmar-grasp', 'moro'], months(4), { range: upTo(13), lit: 'atnr' }),
  view(BOTH, months(6), { range: upTo(13), ...ORDER }),
];
