/** The phases a source's window passes through, in their order, after the span it is silent on. */

export const PHASES = ['not-yet', 'emerging', 'established', 'integrating', 'integrated'] as const;

export type Phase = (typeof PHASES)[number];

/** Where each phase stands in a row of probabilities: silent first, then the phases in order. */
// index 0: silent
export const NOT_YET = 1;
export const EMERGING = 2;
export const ESTABLISHED = 3;
export const INTEGRATING = 4;
export const INTEGRATED = 5;
export const ROW = 6;

/** The phase at an index of a row; undefined for silent. */
export const phaseAt = (index: number): Phase | undefined => PHASES[index - 1];
