/** English for what came back, or went again, when a touch of the recording was undone or made again. */
import type { Side } from '../../atlas/types.ts';
import type { Response } from '../../case/finding.ts';
import { sides } from './atlas.ts';
import { responses } from './case.ts';

/** What is there now; undefined: nothing. */
export const cameBack = (name: string, side: Side, response: Response | undefined): string =>
  `${name}${side === 'midline' ? '' : `, ${sides[side]}`}: ${
    response ? responses[response] : 'not recorded'
  }.`;
