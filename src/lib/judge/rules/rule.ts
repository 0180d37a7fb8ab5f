/** A rule that stands on top of the phase: it looks at more than one response at one age. */
import type { CivilDate } from '../../age/civil.ts';
import type { Reflex } from '../../atlas/types.ts';
import type { Finding } from '../../case/finding.ts';
import type { Totals } from '../expectation.ts';

/** What a verdict asks for, from least to most; not judged is its own. */
export const ATTENTIONS = ['not-judged', 'fits', 'watch', 'discuss'] as const;
export type Attention = (typeof ATTENTIONS)[number];

export const FLAGS = ['uneven', 'weak', 'brisk', 'obligatory', 'returned'] as const;
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
}

/** What a rule raises: its flag, what it asks for, and what a sentence needs to know. */
export interface Raised {
  flag: Flag;
  asks: 'watch' | 'discuss' | 'fits';
  /** For uneven: whether the difference is marked, and what the other side answered. */
  marked?: boolean;
  other?: Finding['response'];
  /** For uneven: unlike sides are common in healthy infants of this age. */
  common?: boolean;
}

export type Rule = (context: RuleContext) => Raised | undefined;
