/** The first year at a glance. */
import { between, months, upTo, view, weeks } from './view.ts';

const EARLY = ['rooting', 'sucking', 'palmar-grasp', 'plantar-grasp', 'moro', 'galant'];

export const firstYear = [
  view(['sucking', 'palmar-grasp', 'moro', 'atnr', 'landau', 'protective-forward'], months(0)),
  view(EARLY, weeks(34), { range: between(weeks(22), months(2)) }),
  view(['rooting', 'sucking', 'babkin'], months(1), { range: upTo(9), figure: 'rooting' }),
  view(['palmar-grasp', 'plantar-grasp', 'traction'], months(5), {
    range: upTo(16),
    figure: 'palmar-grasp',
  }),
  view(['moro', 'acoustic-startle'], months(3), { range: upTo(9), figure: 'moro', lit: 'moro' }),
  view(['atnr', 'tlr', 'stnr'], months(4), { figure: 'atnr' }),
  view(['labyrinthine-righting', 'optical-righting', 'landau'], months(5), {
    range: upTo(30),
    figure: 'landau',
  }),
  view(['protective-forward', 'protective-sideways', 'protective-backward'], months(8), {
    range: between(months(0), months(18)),
    figure: 'protective-forward',
  }),
  view(
    [
      'rooting',
      'galant',
      'moro',
      'palmar-grasp',
      'atnr',
      'landau',
      'protective-forward',
      'equilibrium-sitting',
    ],
    months(6),
  ),
];
