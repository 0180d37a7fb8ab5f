/**
 * The empty axis: an exercise in which each reflex's band is put where it belongs, and how far each
 * lies from the sources. Distances are in days here; the words say weeks.
 */
import { randomLcg, shuffler } from 'd3';
import { DAYS_PER_MONTH, DAYS_PER_WEEK, TERM_DAYS } from '../age/axis.ts';
import type { LaneData } from '../chart/model.ts';

/** The part of the axis that is worked on, in axis days. What reaches its right edge runs on. */
export interface Bounds {
  from: number;
  to: number;
}

/** A band put on the axis: it begins before it ends, and at the right edge it has no end. */
export interface Placed {
  begins: number;
  ends: number;
}

/** What the sources have of one reflex. */
export interface Truth {
  id: string;
  /** The span in which the mean expectation is one half or more; the end is infinite for life. */
  band: Placed;
  /** The ages the sources print for its beginning and its end, earliest to latest. */
  beginning: Bounds;
  ending: Bounds;
}

/** The shortest a band can be. */
export const LEAST_DAYS = DAYS_PER_WEEK;

/** Where every band stands before it is placed: the same for all, so that it gives nothing away. */
export const START: Placed = { begins: TERM_DAYS, ends: TERM_DAYS + 6 * DAYS_PER_MONTH };

const hull = (from: number, to: number, also: number): Bounds => ({
  from: Math.min(from, also),
  to: Math.max(to, also),
});

/**
 * The band of a lane and what the sources print around it; undefined where no source dates its
 * beginning, or none its end and none has it stay: then there is nothing to be right about.
 */
export function truthOf({ id, figures, appearsBy, integratesBy }: LaneData): Truth | undefined {
  const { appears, integrates, lifelong } = figures;
  if (!appears || !(integrates || lifelong) || !Number.isFinite(appearsBy)) return undefined;
  const ends = integrates ?? { from: Infinity, to: Infinity };
  return {
    id,
    band: { begins: appearsBy, ends: integratesBy },
    beginning: hull(appears.from, appears.to, appearsBy),
    ending: hull(ends.from, lifelong ? Infinity : ends.to, integratesBy),
  };
}

/** How far a band lies from the sources. */
export interface Score {
  /** Days its beginning lies outside what the sources print: negative when too early, else too late. */
  beginsDays: number;
  endsDays: number;
  /** Both distances together, without their signs. */
  days: number;
}

const held = (day: number, { from, to }: Bounds): number => Math.min(Math.max(day, from), to);

/** Signed distance of a day from a span, both taken as far as the axis reaches. */
function outside(day: number, span: Bounds, bounds: Bounds): number {
  const at = held(day, bounds);
  const [from, to] = [held(span.from, bounds), held(span.to, bounds)];
  return at < from ? at - from : at > to ? at - to : 0;
}

export function scoreOf(placed: Placed, truth: Truth, bounds: Bounds): Score {
  const beginsDays = outside(placed.begins, truth.beginning, bounds);
  const endsDays = outside(placed.ends, truth.ending, bounds);
  return { beginsDays, endsDays, days: Math.abs(beginsDays) + Math.abs(endsDays) };
}

/** All distances together, in days. */
export const totalOf = (scores: readonly Score[]): number =>
  scores.reduce((sum, { days }) => sum + days, 0);

/** What of a band is taken hold of. */
export type Part = 'whole' | 'begins' | 'ends';

/** A band after a part of it was moved by some days: it stays on the axis and keeps its least length. */
export function moved(placed: Placed, part: Part, days: number, bounds: Bounds): Placed {
  const { begins, ends } = placed;
  switch (part) {
    case 'begins':
      return { begins: held(begins + days, { from: bounds.from, to: ends - LEAST_DAYS }), ends };
    case 'ends':
      return { begins, ends: held(ends + days, { from: begins + LEAST_DAYS, to: bounds.to }) };
    case 'whole': {
      const by = held(days, { from: bounds.from - begins, to: bounds.to - ends });
      return { begins: begins + by, ends: ends + by };
    }
  }
}

/** Days a key moves a part by; infinite to an edge; undefined for a key that moves nothing. */
export function stepOf(key: string, isFar: boolean): number | undefined {
  const week = DAYS_PER_WEEK * (isFar ? 4 : 1);
  switch (key) {
    case 'ArrowLeft':
    case 'ArrowDown':
      return -week;
    case 'ArrowRight':
    case 'ArrowUp':
      return week;
    case 'Home':
      return -Infinity;
    case 'End':
      return Infinity;
    default:
      return undefined;
  }
}

/** The lanes in an order that gives nothing away: the same for the same number of the sheet. */
export const shuffledBy = (ids: readonly string[], sheet: number): string[] =>
  shuffler(randomLcg(sheet))([...ids]);
