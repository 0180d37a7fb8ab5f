/** Protective reactions that stay for life. */
import { between, months, view } from './view.ts';

const ALL = [
  'protective-downward',
  'protective-forward',
  'protective-sideways',
  'protective-backward',
];
const range = between(months(0), months(18));

export const protective = [
  view(ALL, months(6), { range }),
  view(ALL, months(4), { range, figure: ALL[0], lit: ALL[0] }),
  view(ALL, months(6), { range, figure: ALL[1], lit: ALL[1] }),
  view(ALL, months(7), { range, figure: ALL[2], lit: ALL[2] }),
  view(ALL, months(9), { range, figure: ALL[3], lit: ALL[3] }),
  view([ALL[1]!, ALL[3]!], months(8), { range, orders: ['protective-directions'] }),
  view(ALL.slice(0, 2), months(9), { range, orders: ['downward-then-forward'] }),
  view(ALL.slice(1, 2), months(12), { range, orders: ['forward-before-walking'] }),
];
