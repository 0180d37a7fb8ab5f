/**
 * Sources that are one voice, confirmed by hand. `copies.ts` works out over all claims which pairs
 * print the same ages; a pair is taken as one voice only where this list says why. Pairs that look
 * alike and are not listed are shown as such, and keep their own voices.
 */

/** One taking over of ages. */
export interface TakenOver {
  /** The source that took the ages over. */
  by: string;
  /** The source it has them from. */
  from: string;
  /**
   * `cites` = it names the other for these ages; `same-ages` = it prints the other's ages in its terms; `one-printout` = both
   * were read from one table.
   */
  how: 'cites' | 'same-ages' | 'one-printout';
  /** Why the two are one voice, in a sentence. */
  reason: string;
}

export const TAKEN_OVER: readonly TakenOver[] = [
  {
    by: 'futagi-2012',
    from: 'allen-capute-1986',
    how: 'cites',
    reason:
      'Its introduction gives the ages before term (25 weeks; some at 25, the majority by 30) with the 1986 study as reference 1. Read in the open-access paper.',
  },
  {
    by: 'statpearls-moro',
    from: 'allen-capute-1986',
    how: 'same-ages',
    reason:
      'The chapter prints the two ages of the study, 25 and 30 weeks, in its term postconceptional age and with a reference number; the reference list was not in the passage read.',
  },
  {
    by: 'molnar-handout',
    from: 'osullivan-handout',
    how: 'one-printout',
    reason:
      'Both were read from one printout with a single column of onset ages for the two books: every onset is the same, and three ends. Which book printed the onset first is not known.',
  },
];
