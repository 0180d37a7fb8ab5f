/**
 * One example that can be followed by hand: two sources, one reflex, two visits. The reflex and both sources
 * are fictional, the error rates are those of the app, and every number comes from the same functions that
 * read a child.
 */
import { fromMonths, toMonths, type AxisDay } from '../../age/axis.ts';
import type { SourcedClaim } from '../../atlas/atlas.ts';
import { MISSED } from '../../atlas/weight.ts';
import { windowsOf } from '../window.ts';
import { FIRST_DAY, ODD } from './constants.ts';
import { Inferred, seen, type Dates, type States } from './course.ts';
import { eventsOf, Prior, priorOf, type EventPrior } from './prior.ts';

/** Both have the response there by term. They have it integrated between these ages, in months after term. */
export const SOURCES = [
  { id: 'one', low: 4, high: 6 },
  { id: 'two', low: 6, high: 8 },
] as const;

/** In months after term, both ages exact. */
export const VISITS = [
  { months: 5, elicited: true },
  { months: 7, elicited: false },
] as const;

const claimOf = ({ id, low, high }: (typeof SOURCES)[number]): SourcedClaim => ({
  reflex: 'fictional',
  role: 'window',
  basis: 'memory',
  population: 'term infants',
  appearsStatus: 'implied',
  integratesStatus: 'given',
  integrates: { asPrinted: `${low} to ${high} months`, unit: 'mo', low, high },
  source: {
    id,
    short: id,
    year: 2000,
    tier: 'course-notes',
    basis: 'memory',
    claims: [],
    counts: [],
  },
  family: id,
  judgedByDefault: true,
});

export const WINDOWS = windowsOf(SOURCES.map(claimOf));
export const DAYS = VISITS.map(({ months, elicited }) =>
  seen(fromMonths(months), elicited, MISSED),
);

/** When it integrated, as the two visits cut the time: before the first, between them, after the second. */
export const PARTS = ['before', 'between', 'after'] as const;
export type Part = (typeof PARTS)[number];

export interface WorkedPart {
  part: Part;
  /** Probability by the sources alone. */
  sources: number;
  /** How likely each visit's finding is, if it integrated in this part. */
  visits: readonly [number, number];
  /** Sources times visits. */
  product: number;
  /** Probability by the sources and the visits. */
  share: number;
}

export interface Worked {
  parts: readonly WorkedPart[];
  /** The sum of the products. */
  total: number;
  /** At the second visit. */
  states: States;
  /** When it integrated, in months after term: median and 90 % interval. */
  dates: Dates;
}

const NOTHING_SEEN: readonly [] = [];

/** P(integrated before the first visit, between the two, after the second or never). */
export function partsOf(course: Inferred): [number, number, number] {
  const [first, second] = VISITS.map(({ months }) => course.by('integrates', fromMonths(months)));
  return [first!, second! - first!, 1 - second!];
}

function workedBy(prior: Prior): Worked {
  const alone = partsOf(new Inferred(prior, NOTHING_SEEN, 0));
  const course = new Inferred(prior, DAYS, 0);
  const shares = partsOf(course);
  const [first, second] = DAYS;
  const visits: readonly (readonly [number, number])[] = [
    [first!.ifNot, second!.ifNot],
    [first!.ifThere, second!.ifNot],
    [first!.ifThere, second!.ifThere],
  ];
  const parts = PARTS.map((part, k): WorkedPart => {
    const [one, other] = visits[k]!;
    return {
      part,
      sources: alone[k]!,
      visits: [one, other],
      product: alone[k]! * one * other,
      share: shares[k]!,
    };
  });
  const { median, low, high } = course.dates('integrates');
  const months = (day: number): number => toMonths(day as AxisDay);
  return {
    parts,
    total: parts.reduce((sum, { product }) => sum + product, 0),
    states: course.states(fromMonths(VISITS[1].months)),
    dates: { median: months(median), low: months(low), high: months(high) },
  };
}

/** If no child differs from every source. */
export const worked = (): Worked => workedBy(priorOf(WINDOWS, 0));

/**
 * With the share of children who differ from every source in when it integrates. That it was there by term is
 * taken as sure, so that the parts remain those of one date.
 */
export function workedWithOdd(): Worked {
  const surely: EventPrior = {
    pieces: [{ from: FIRST_DAY, to: FIRST_DAY, weight: 1 }],
    dated: true,
  };
  return workedBy(new Prior(surely, eventsOf(WINDOWS, ODD).integrates));
}
