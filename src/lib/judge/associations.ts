/**
 * What a finding has been reported with: the associations of its own direction only. A response still
 * there is never shown what a missing one went with.
 */
import { ACCURACY, type Accuracy } from '../atlas/evidence/accuracy.ts';
import { isOfVariant } from '../atlas/variants.ts';
import { tellsOf, type Tells } from '../number/likelihood.ts';
import type { JudgedFinding } from './judge.ts';

export type Direction = 'persistence' | 'absence' | 'asymmetry';

export interface Association {
  row: Accuracy;
  /** From four printed cells; undefined where they were not printed. */
  tells: Tells | undefined;
}

/** The directions a finding points to: what it is by its phase, and unlike sides. */
export function directionsOf({ judged, raised }: JudgedFinding): Direction[] {
  const directions: Direction[] = [];
  if (judged.verdict === 'persisting') directions.push('persistence');
  if (judged.verdict === 'missing') directions.push('absence');
  if (raised.some(({ flag }) => flag === 'uneven')) directions.push('asymmetry');
  return directions;
}

function tellsIn(row: Accuracy): Tells | undefined {
  const { truePositive, falseNegative, falsePositive, trueNegative } = row;
  if (truePositive === null || falseNegative === null) return undefined;
  if (falsePositive === null || trueNegative === null) return undefined;
  return tellsOf({ truePositive, falseNegative, falsePositive, trueNegative });
}

/**
 * The associations of a reflex in one direction: those that were counted first.
 * @param variant as which it was tested; undefined: not said, and then those of any
 */
export const associationsOf = (
  reflex: string,
  direction: Direction,
  variant?: string,
): Association[] =>
  ACCURACY.filter((row) => row.reflex === reflex && row.direction === direction)
    .filter((row) => isOfVariant(row, variant))
    .map((row) => ({ row, tells: tellsIn(row) }))
    .sort((a, b) => Number(b.row.certainty === 'counted') - Number(a.row.certainty === 'counted'));
