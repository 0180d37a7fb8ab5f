/** The part of the axis in sight: zoom and pan as arithmetic on a stretch of days. */
import { fromGestationWeeks, fromMonths, toAxisDay, type AxisDay } from '../age/axis.ts';
import type { Stretch } from './model.ts';

/** Nothing is drawn before 8 weeks of gestation or after 5 years. */
export const LIMITS: Stretch = { from: fromGestationWeeks(8), to: fromMonths(60) };

/** What is in sight at first: 20 weeks of gestation to 24 months after term. */
export const WHOLE: Stretch = { from: fromGestationWeeks(20), to: fromMonths(24) };

/** The least that can be zoomed to. */
export const MIN_SPAN_DAYS = 14;

const MAX_SPAN_DAYS = LIMITS.to - LIMITS.from;

export const spanOf = (range: Stretch): number => range.to - range.from;

const stretch = (from: number, span: number): Stretch => {
  const start = Math.min(Math.max(from, LIMITS.from), LIMITS.to - span);
  return { from: toAxisDay(start), to: toAxisDay(start + span) };
};

/** The nearest stretch that lies within the limits and is not too short; its length is kept if it can be. */
export function clampRange(range: Stretch): Stretch {
  const span = Math.min(Math.max(spanOf(range), MIN_SPAN_DAYS), MAX_SPAN_DAYS);
  const middle = (range.from + range.to) / 2;
  return stretch(span === spanOf(range) ? range.from : middle - span / 2, span);
}

/** Zooms so that `day` stays where it is; a factor above 1 shows less of the axis. */
export function zoomAbout(range: Stretch, day: number, factor: number): Stretch {
  const before = spanOf(range);
  const span = Math.min(Math.max(before / factor, MIN_SPAN_DAYS), MAX_SPAN_DAYS);
  return stretch(day - ((day - range.from) * span) / before, span);
}

/** Moves what is in sight later (or earlier) by a number of days. */
export const panBy = (range: Stretch, days: number): Stretch =>
  stretch(range.from + days, spanOf(range));

/** The stretch two fingers hold: the days under them stay under them. */
export function pinch(
  range: Stretch,
  held: readonly [number, number],
  shares: readonly [number, number],
): Stretch {
  const apart = shares[1] - shares[0];
  if (Math.abs(apart) < 0.02) return range;
  const span = Math.abs((held[1] - held[0]) / apart);
  const clamped = Math.min(Math.max(span, MIN_SPAN_DAYS), MAX_SPAN_DAYS);
  return stretch((held[0] + held[1]) / 2 - ((shares[0] + shares[1]) / 2) * clamped, clamped);
}

/** The age line stays on the axis. */
export const clampAge = (day: number): AxisDay =>
  toAxisDay(Math.min(Math.max(day, LIMITS.from), LIMITS.to));

/** What is in sight after the age line moved: shifted just far enough that the line is seen. */
export function follow(range: Stretch, day: number): Stretch {
  const margin = spanOf(range) * 0.04;
  if (day < range.from + margin) return panBy(range, day - margin - range.from);
  if (day > range.to - margin) return panBy(range, day + margin - range.to);
  return range;
}
