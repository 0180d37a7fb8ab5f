/** Reading a child: the invented child visit by visit, the hall judging first. */
import { toAxisDay } from '../../age/axis.ts';
import { upTo, view } from './view.ts';

const LANES = [
  'rooting',
  'palmar-grasp',
  'moro',
  'atnr',
  'galant',
  'crossed-extension',
  'stepping',
];

/** Corrected ages of the three visits, and of birth, on the axis. */
const BORN = toAxisDay(31 * 7 + 2);
export const VISITS = [toAxisDay(280 + 39), toAxisDay(280 + 102), toAxisDay(280 + 158)] as const;

const seen = (visits: number, verdicts: boolean) => ({ id: 'kestrel', visits, verdicts });
const range = upTo(9);

export const readingChild = [
  view(LANES, BORN, { range, child: seen(0, false) }),
  ...VISITS.flatMap((day, index) => [
    view(LANES, day, { range, child: seen(index + 1, false) }),
    view(LANES, day, { range, child: seen(index + 1, true) }),
  ]),
  view(LANES, VISITS[2], { range, child: seen(3, false) }),
];
