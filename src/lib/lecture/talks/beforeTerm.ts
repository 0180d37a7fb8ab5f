/** Before term and after: why weeks of gestation, why the corrected age, one child counted four ways. */
import { toAxisDay } from '../../age/axis.ts';
import { between, months, upTo, view, weeks } from './view.ts';

const CHANGING = ['rooting', 'palmar-grasp', 'moro', 'atnr', 'stepping', 'galant'];
const SEEN = ['moro', 'palmar-grasp', 'atnr', 'stepping'];

/** Born at 31w2d; first seen 100 days after birth, 39 days after the due date. */
const BORN = toAxisDay(31 * 7 + 2);
const FIRST = toAxisDay(280 + 39);
const UNCORRECTED = toAxisDay(280 + 100);

const kestrel = { id: 'kestrel', visits: 0, verdicts: false };

export const beforeTerm = [
  view(CHANGING, months(0), { range: between(weeks(20), months(12)) }),
  view(['palmar-grasp', 'plantar-grasp', 'moro', 'rooting', 'traction'], weeks(32), {
    range: between(weeks(20), months(1)),
  }),
  view(['palmar-grasp', 'plantar-grasp', 'moro', 'rooting', 'stepping', 'traction'], weeks(30), {
    range: between(weeks(22), months(1)),
  }),
  view(SEEN, BORN, { range: upTo(8), child: kestrel }),
  view(SEEN, FIRST, { range: upTo(8), child: kestrel }),
  view(SEEN, UNCORRECTED, { range: upTo(8) }),
  view(SEEN, FIRST, { range: upTo(8), child: { ...kestrel, visits: 1 } }),
  view(SEEN, FIRST, { range: between(months(-1), months(4)), child: { ...kestrel, visits: 1 } }),
];
