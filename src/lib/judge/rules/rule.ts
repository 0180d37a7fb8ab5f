/** A rule that stands on top of the phase: it looks at more than one response at one age. */
import type { CivilDate } from '../../age/civil.ts';
import type { Reflex } from '../../atlas/types.ts';
import type { Finding } from '../../case/finding.ts';
import type { Totals } from '../expectation.ts';
import type { NotNow } from '../reading/lost.ts';

/** What a finding asks for, from least to most; not judged is its own. `today` should not wait. */
export const ATTENTIONS = ['not-judged', 'fits', 'watch', 'discuss', 'today'] as const;
export type Attention = (typeof ATTENTIONS)[number];

/** Whether anything is asked for. */
export const isAsking = (attention: Attention): boolean => asksMore(attention, 'fits');

/** Whether one asks for more than another. */
export const asksMore = (one: Attention, other: Attention): boolean =>
  ATTENTIONS.indexOf(one) > ATTENTIONS.indexOf(other);

export const FLAGS = [
  'uneven',
  'weak',
  'brisk',
  'obligatory',
  'returned',
  'seen-before',
  'lost',
] as const;
export type Flag = (typeof FLAGS)[number];

/** Whether a response was there on a date, by any examiner. */
export interface PastAnswer {
  on: CivilDate;
  elicited: boolean;
}

/** All a rule may look at. */
export interface RuleContext {
  finding: Finding;
  reflex: Reflex;
  /** The finding on the other side at the same visit, if it is an answer. */
  other: Finding | undefined;
  /** The visit's date. */
  on: CivilDate;
  /** All answers on this reflex and side, oldest first, one entry a date. */
  history: readonly PastAnswer[];
  totals: Totals;
  /** The age on the axis. */
  ageDays: number;
  /** On how many days in a row, this one the last, the same side was the stronger; 0 where they agree. */
  stays: number;
  /** P(gone by a date), from the sources and the child's days up to it, 0 to 1; 0 where no source dates it. */
  goneBy: (on: CivilDate) => number;
  /** Seen while crying, and that day in no other state: it is to be seen again in a calm infant. */
  onlyCrying: boolean;
}

/** What a rule raises: its flag, what it asks for, and what a sentence needs to know. */
export interface Raised {
  flag: Flag;
  asks: Exclude<Attention, 'not-judged'>;
  /** For uneven: whether the difference is marked, and what the other side answered. */
  marked?: boolean;
  other?: Finding['response'];
  /** For uneven: unlike sides are common in healthy infants of this age. */
  common?: boolean;
  /** For uneven: this side answers as expected, and the other is the one that asks. */
  asExpected?: boolean;
  /** For uneven: on so many days in a row the same side was the stronger. */
  stays?: number;
  /** For brisk and obligatory: seen while crying alone. */
  crying?: boolean;
  /** For seen before and lost: when it was last seen, and why it is lost. */
  notNow?: NotNow;
  /** For seen before: it was tried more than once at this visit. */
  triedAgain?: boolean;
}

export type Rule = (context: RuleContext) => Raised | undefined;
