/** English for the answer that examiners agree on: it loads where one can be recorded. */
import type { Side } from '../../atlas/types.ts';

export const differ = (name: string, side: Side): string =>
  `${name}${side === 'midline' ? '' : `, ${side}`}: the examiners differ`;
export const agreed = 'Agreed answer';
export const notYet = 'not agreed yet';
export const help =
  'The agreed answer is judged in place of both. Both stay in the record, each with its examiner.';
