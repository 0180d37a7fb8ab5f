/** The core set for an age: what most sources teach to be examined then, and what tells nothing then. */
import { fromMonths } from '../age/axis.ts';
import type { Reflex } from '../atlas/types.ts';
import { readAt, totalsOf, type Compiled, type Totals } from './expectation.ts';
import { CORE_SIZE, EXPECTED_THERE, USUAL_MONTHS } from './reading/constants.ts';
import { EMERGING, INTEGRATED, INTEGRATING, NOT_YET } from './phases.ts';
import { voicesOf } from './verdict.ts';
import { SPEAKS_AT_LEAST } from './thresholds.ts';

/** One reflex at an age, with what the chosen sources say of it then. */
export interface AtAge {
  reflex: Reflex;
  compiled: Compiled;
  totals: Totals;
  ageDays: number;
  sdDays: number;
}

/**
 * Listed for teaching, and not to be tested in a clinic: what is described in water (the caution
 * `no-water`; "Not a bedside test: risk of aspiration and cooling" in the prose of the swimming response).
 */
export const isForTeachingOnly = ({ cautions }: Pick<Reflex, 'cautions'>): boolean =>
  cautions.includes('no-water');

const USUAL_DAYS = fromMonths(USUAL_MONTHS) - fromMonths(0);

/** Whether it was expected to be present at the usual visit before, and is not any more. */
function hasJustGone({ compiled, totals, ageDays, sdDays }: AtAge): boolean {
  if (!(totals.meanExpectation < EXPECTED_THERE)) return false;
  const before = totalsOf(readAt(compiled, ageDays - USUAL_DAYS, sdDays));
  return before.anySpeaks && before.meanExpectation >= EXPECTED_THERE;
}

/**
 * Whether a finding at this age tells something for a child of whom nothing else is known: the response is
 * expected to be present, so that its absence or a difference of sides would count, or it was until a short
 * while ago, so that its presence would.
 */
export const isDue = (at: AtAge): boolean =>
  at.totals.anySpeaks && (at.totals.meanExpectation >= EXPECTED_THERE || hasJustGone(at));

/**
 * Whether a finding tells nothing at this age: no source speaks, or the response is not expected yet and its
 * absence tells little. Where it is expected to be gone its presence would tell.
 */
export function tellsNothing({ reflex, totals }: AtAge): boolean {
  if (!totals.anySpeaks) return true;
  if (reflex.absence.tells === 'tells') return false;
  const { phases, meanExpectation } = totals;
  const ahead = phases[NOT_YET]! + phases[EMERGING]!;
  return meanExpectation < EXPECTED_THERE && ahead > phases[INTEGRATING]! + phases[INTEGRATED]!;
}

/** How many voices speak of an age: sources that copy one another are one. */
export function voicesAt({ compiled, ageDays, sdDays }: AtAge): number {
  const voices = voicesOf('elicited', readAt(compiled, ageDays, sdDays));
  return new Set(voices.filter((one) => one.speaks >= SPEAKS_AT_LEAST).map((one) => one.family))
    .size;
}

/**
 * The core set of an age: of the reflexes that are due then and may be tested in a clinic, those of which
 * most voices speak, `CORE_SIZE` at most. Of equal ones the more expected is taken, then by id.
 * @returns the number of voices by reflex id
 */
export function coreSet(reflexes: readonly AtAge[]): Map<string, number> {
  const due = reflexes
    .filter((at) => !isForTeachingOnly(at.reflex) && isDue(at))
    .map((at) => ({ at, voices: voicesAt(at) }));
  due.sort(
    (a, b) =>
      b.voices - a.voices ||
      b.at.totals.meanExpectation - a.at.totals.meanExpectation ||
      (a.at.reflex.id < b.at.reflex.id ? -1 : 1),
  );
  return new Map(due.slice(0, CORE_SIZE).map(({ at, voices }) => [at.reflex.id, voices]));
}
