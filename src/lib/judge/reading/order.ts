/**
 * Which of two things came first in one child: P(first before second) with the sources alone and with the
 * child's days. Each is one event of one or several courses, which are independent but for the shift that
 * all days share.
 */
import type { EventKind, Inferred, Posterior } from './course.ts';
import {
  AGAINST_ODDS,
  FIRST_DAY,
  IN_ORDER_ODDS,
  IN_ORDER_PROBABILITY,
  LAST_DAY,
  ODDS_FLOOR,
  REVERSED_ODDS,
  REVERSED_PROBABILITY,
  REVERSED_SOURCES,
} from './constants.ts';
import { gaussOn } from './gauss.ts';

/** Something that happens once: the first or the last of the events of some courses. */
export interface Happening {
  event: EventKind;
  /** Appearing counts with the first of them, integrating with the last. One at least. */
  courses: readonly Inferred[];
  /** Whether its distribution is polynomial between its days; a milestone's is not. */
  polynomial: boolean;
}

/** The probabilities of the three ways, which sum to 1. */
export interface Orders {
  firstBefore: number;
  secondBefore: number;
  /** Both at once, which only what is as old as the axis can be, or neither ever. */
  neither: number;
}

/** One happening at one shift. */
interface Placed {
  event: EventKind;
  posteriors: readonly Posterior[];
}

/** P(it has happened by a day). */
function by({ event, posteriors }: Placed, day: number): number {
  if (posteriors.length === 1) return posteriors[0]!.by(event, day);
  let product = 1;
  for (const one of posteriors) {
    const p = one.by(event, day);
    product *= event === 'appears' ? 1 - p : p;
  }
  return event === 'appears' ? 1 - product : product;
}

/** Its density on a day, per day. */
function density({ event, posteriors }: Placed, day: number): number {
  if (posteriors.length === 1) return posteriors[0]!.density(event, day);
  let sum = 0;
  for (const one of posteriors) {
    let product = one.density(event, day);
    for (const other of posteriors)
      if (other !== one) {
        const p = other.by(event, day);
        product *= event === 'appears' ? 1 - p : p;
      }
    sum += product;
  }
  return sum;
}

/** All days at which a density of either may jump, ascending; some more than once. */
function edgesOf(first: Placed, second: Placed): Float64Array {
  const lists = [...first.posteriors, ...second.posteriors].flatMap((one) => [
    one.prior.days,
    one.days,
  ]);
  const edges = new Float64Array(lists.reduce((sum, { length }) => sum + length, 2));
  edges[0] = LAST_DAY;
  edges[1] = FIRST_DAY;
  let filled = 2;
  for (const list of lists) {
    edges.set(list, filled);
    filled += list.length;
  }
  return edges.sort();
}

/**
 * A milestone's density is smooth within a month. With so many points more than a polynomial needs, an
 * order and the same order turned round, which are integrated over the one density and over the other,
 * agree to nine places.
 */
const SMOOTH_MORE = 3;

/** The three ways at one shift. */
function ordersAt(first: Placed, second: Placed, points: number): Orders {
  const at = { first: by(first, FIRST_DAY), second: by(second, FIRST_DAY) };
  const end = { first: by(first, LAST_DAY), second: by(second, LAST_DAY) };
  let firstBefore = at.first * (1 - at.second);
  const edges = edgesOf(first, second);
  const nodes = gaussOn(points);
  for (let k = 1; k < edges.length; k++) {
    const from = edges[k - 1]!;
    const width = edges[k]! - from;
    if (width === 0 || from < FIRST_DAY || from >= LAST_DAY) continue;
    for (const { at: part, weight } of nodes) {
      const day = from + part * width;
      const likely = density(first, day);
      if (likely > 0) firstBefore += weight * width * likely * (1 - by(second, day));
    }
  }
  const neither = (1 - end.first) * (1 - end.second) + at.first * at.second;
  return { firstBefore, secondBefore: Math.max(0, 1 - firstBefore - neither), neither };
}

/**
 * The three ways, over every shift; undefined where the days and sources leave nothing possible. All
 * courses are of one child, so that they are shifted alike.
 */
export function ordersOf(first: Happening, second: Happening): Orders | undefined {
  const courses = [...first.courses, ...second.courses];
  const points = courses.length + (first.polynomial && second.polynomial ? 0 : SMOOTH_MORE);
  const sum: Orders = { firstBefore: 0, secondBefore: 0, neither: 0 };
  let total = 0;
  for (const [k, shift] of courses[0]!.shifts.entries()) {
    const place = ({ event, courses: of }: Happening): Placed => ({
      event,
      posteriors: of.map((course) => course.posteriors[k]!),
    });
    const [one, other] = [place(first), place(second)];
    let weight = shift.weight;
    for (const { evidence } of [...one.posteriors, ...other.posteriors]) weight *= evidence;
    if (!(weight > 0)) continue;
    const orders = ordersAt(one, other, points);
    total += weight;
    sum.firstBefore += weight * orders.firstBefore;
    sum.secondBefore += weight * orders.secondBefore;
    sum.neither += weight * orders.neither;
  }
  if (total === 0) return undefined;
  return {
    firstBefore: sum.firstBefore / total,
    secondBefore: sum.secondBefore / total,
    neither: sum.neither / total,
  };
}

/**
 * What the visits say of an order: the odds of first before second against second before first with the
 * child's days, over the same with the sources alone. A child in whom neither happens reverses nothing, so
 * that neither is left out. Always finite and above 0.
 */
export function oddsRatio(alone: Orders, seen: Orders): number {
  const odds = ({ firstBefore, secondBefore }: Orders): number =>
    Math.max(firstBefore, ODDS_FLOOR) / Math.max(secondBefore, ODDS_FLOOR);
  return odds(seen) / odds(alone);
}

export type OrderWord = 'in-order' | 'reversed' | 'against' | 'open';

/** The word for an order, from the probabilities with the sources alone and with the child's days. */
export function orderWord(sourcesAlone: number, probability: number, ratio: number): OrderWord {
  if (probability >= IN_ORDER_PROBABILITY && ratio >= IN_ORDER_ODDS) return 'in-order';
  if (
    ratio <= REVERSED_ODDS &&
    (probability < REVERSED_PROBABILITY || sourcesAlone >= REVERSED_SOURCES)
  )
    return 'reversed';
  return ratio <= AGAINST_ODDS ? 'against' : 'open';
}
