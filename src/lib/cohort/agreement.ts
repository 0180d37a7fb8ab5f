/**
 * Agreement between two examiners who saw the same child on the same date: what they answered of the
 * same reflex on the same side, laid beside each other.
 */
import type { CivilDate } from '../age/civil.ts';
import type { Case, Visit } from '../case/case.ts';
import { isAnswer, RESPONSES, strengthOf, testOf, type Finding } from '../case/finding.ts';
import { wilson, type ShareInterval } from '../number/wilson.ts';
import { kappaOf, linearWeights, plainWeights, type Kappa } from './kappa.ts';

/** The responses that have an order, from not elicited to obligatory. */
export const ORDERED = RESPONSES.filter((response) => response !== 'not-assessable');

/**
 * Below this many pairs an agreement is called few. Ours: two for each of the 25 cells of the table,
 * since the standard error holds for large numbers only.
 */
export const FEW_PAIRS = 2 * ORDERED.length ** 2;

/**
 * Below this many pairs no kappa is given: its interval would span most of what it can be. Ours.
 */
export const KAPPA_PAIRS = 20;

/** One finding by each of two examiners, of one reflex and side in one child on one date. */
export interface Pair {
  /** Which of the records it stands in, by its place among them. */
  record: number;
  on: CivilDate;
  first: Finding;
  second: Finding;
}

export interface Difference extends Pair {
  /** How many steps apart the answers lie; null where either could not be judged. */
  steps: number | null;
}

export interface ExaminerAgreement {
  /** The two examiners, in the order of their names. */
  first: string;
  second: string;
  /** Pairs in which both gave an answer: what the figures are worked out from. */
  n: number;
  /** Pairs left out of the figures: not assessable, or not elicited in a state that tells nothing. */
  leftOut: number;
  /** Pairs with the same response; the share and its 95 % Wilson interval are null without a pair. */
  same: number;
  share: number | null;
  interval: ShareInterval | null;
  kappa: Kappa;
  /** Linear weights over the five ordered responses. */
  weighted: Kappa;
  /** `few`: fewer than FEW_PAIRS, the intervals of the kappas are rough. */
  size: 'enough' | 'few';
  /** Counts by response in the order of ORDERED: rows the first examiner, columns the second. */
  table: readonly (readonly number[])[];
  /** Every pair with unlike responses, oldest first within a record. */
  differences: readonly Difference[];
}

/** Figures of the pairs of two examiners. The order of the pairs changes no figure. */
export function agreementOf(
  first: string,
  second: string,
  pairs: readonly Pair[],
): ExaminerAgreement {
  const table = ORDERED.map(() => ORDERED.map(() => 0));
  const differences: Difference[] = [];
  let n = 0;
  let same = 0;
  for (const pair of pairs) {
    const both = isAnswer(pair.first) && isAnswer(pair.second);
    const [row, column] = [strengthOf(pair.first.response), strengthOf(pair.second.response)];
    const alike = row === column;
    if (both) {
      n += 1;
      if (alike) same += 1;
      table[row]![column]! += 1;
    }
    if (!alike) differences.push({ ...pair, steps: both ? Math.abs(row - column) : null });
  }
  return {
    first,
    second,
    n,
    leftOut: pairs.length - n,
    same,
    share: n > 0 ? same / n : null,
    interval: n > 0 ? wilson(same, n) : null,
    kappa: kappaOf(table, plainWeights(ORDERED.length)),
    weighted: kappaOf(table, linearWeights(ORDERED.length)),
    size: n < FEW_PAIRS ? 'few' : 'enough',
    table,
    differences,
  };
}

/** What two visits of one date share: what both examiners tested, a variant apart from another, and its side. */
function pairsOf(record: number, first: Visit, second: Visit): Pair[] {
  const keyOf = (finding: Finding): string => `${testOf(finding)} ${finding.side}`;
  const others = new Map(second.findings.map((finding) => [keyOf(finding), finding]));
  return first.findings.flatMap((finding) => {
    const other = others.get(keyOf(finding));
    return other ? [{ record, on: first.on, first: finding, second: other }] : [];
  });
}

const byName = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * Every two examiners who saw a child on the same date, each two by themselves, over all records, in
 * the order of their names. A visit without an examiner's name is left out: whose it was is unknown.
 */
export function agreementsIn(records: readonly Case[]): ExaminerAgreement[] {
  const found = new Map<string, { first: string; second: string; pairs: Pair[] }>();
  records.forEach(({ visits }, record) => {
    const named = visits
      .filter(({ examiner }) => examiner !== '')
      .sort((a, b) => byName(a.on, b.on) || byName(a.examiner, b.examiner));
    for (const [index, a] of named.entries())
      for (const b of named.slice(index + 1)) {
        if (a.on !== b.on) break;
        const pairs = pairsOf(record, a, b);
        if (pairs.length === 0) continue;
        const [first, second] = [a.examiner, b.examiner];
        const key = JSON.stringify([first, second]);
        const known = found.get(key);
        if (known) known.pairs.push(...pairs);
        else found.set(key, { first, second, pairs });
      }
  });
  return [...found.values()]
    .sort((a, b) => byName(a.first, b.first) || byName(a.second, b.second))
    .map(({ first, second, pairs }) => agreementOf(first, second, pairs));
}
