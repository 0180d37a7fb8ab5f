/** Counts of real infants: who was counted, by which measure, and which answer of an examination it is. */
import type { Basis } from './types.ts';

/** The unit of a counted age; `milestone` = an event that is printed without an age. */
export type CountUnit = 'wkPMA' | 'mo' | 'milestone';

/** A count in real infants. Rows with different measures must never be pooled. */
export interface Count {
  /** A reflex id, or `any-reflex`. */
  reflex: string;
  /** Which variant of the response was counted, where they differ in age; left out where it is not said. */
  variant?: string;
  /**
   * `count` = the response that is seen was counted; `context` = another measure (a recording, a posture
   * taken by itself), patients, or signs graded in children.
   */
  role: 'count' | 'context';
  asPrinted: string;
  unit: CountUnit;
  low: number | null;
  high: number | null;
  /** Whether ages were corrected for prematurity, `unknown` where the source does not say; undefined where
   * the unit leaves no doubt. */
  corrected?: boolean | 'unknown';
  /** Infants or fetuses seen at this age; null where only the size of the whole sample is printed. */
  n: number | null;
  /** The printed base of the share where it is not infants: several responses of one infant. */
  of?: { number: number; what: 'observations' | 'feet' };
  /** How many of `of`, or else of `n`, where that was printed. */
  hits?: number;
  /** Share in per cent; null = a statement about the group without a share. */
  percent: number | null;
  qualifier: '=' | '~' | '<' | '>' | '';
  measure: string;
  /** Rows on one reflex with the same key counted the same thing. */
  measureId: string;
  /**
   * Which answer of an examination the share is of: the response elicited, or not elicited. `other` =
   * neither: a part of the response, habituation, a grade, another stimulus.
   */
  answer: 'elicited' | 'not-elicited' | 'other';
  /**
   * Everyone else gave the other answer, so that 100 less the share is the share of that answer. Where
   * this is false (both feet had to answer, a third grade) the share still is the least for its answer.
   */
  complementary: boolean;
  /** Counted in infants the source calls healthy, normal or low-risk, or saw at routine visits. */
  healthy: boolean;
  population: string;
  basis: Basis;
  note?: string;
}
