/** Look-alikes, each with the figure of the first of its pair. */
import { between, months, upTo, view } from './view.ts';

export const PAIRS = [
  ['moro', 'acoustic-startle'],
  ['moro', 'traction'],
  ['flexor-withdrawal', 'crossed-extension'],
  ['labyrinthine-righting', 'optical-righting'],
  ['neck-righting', 'body-righting-body'],
  ['tlr', 'landau'],
  ['crawling', 'swimming'],
] as const;

const [startle, traction, withdrawal, righting, rotation, extension, rhythm] = PAIRS;

export const lookAlikes = [
  view(['moro', 'acoustic-startle', 'traction', 'crossed-extension', 'tlr', 'landau'], months(2)),
  view(startle, months(2), { range: upTo(9), figure: startle[0] }),
  view(traction, months(2), { range: upTo(9), figure: traction[1] }),
  view(withdrawal, months(1), { range: upTo(7), figure: withdrawal[1] }),
  view(righting, months(3), { range: between(months(-2), months(14)), figure: righting[0] }),
  view(rotation, months(5), { range: between(months(-2), months(24)), figure: rotation[0] }),
  view(extension, months(5), { range: between(months(-2), months(24)), figure: extension[1] }),
  view(rhythm, months(1), { range: upTo(8), figure: rhythm[1] }),
];
