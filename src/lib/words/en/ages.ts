/** English for ages and dates, the way the trade says them. */
import { TERM_DAYS, toMonths, type AxisDay } from '../../age/axis.ts';
import { partsOf, type CivilDate } from '../../age/civil.ts';
import type { Ages } from '../../age/clocks.ts';
import { formatGestation } from '../../age/gestation.ts';
import { spokenAge } from '../../age/spoken.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** `18 May 2026`. */
export function dateWords(date: CivilDate): string {
  const { year, month, day } = partsOf(date);
  return `${day} ${MONTHS[month - 1] ?? ''} ${year}`;
}

/** `18 May`, where the year is plain. */
export function shortDateWords(date: CivilDate): string {
  const { month, day } = partsOf(date);
  return `${day} ${(MONTHS[month - 1] ?? '').slice(0, 3)}`;
}

/** An age counted from a date: `3 mo 2 wk`, `5 wk 3 d`, `7 wk before term`. */
export function ageWords(origin: CivilDate, on: CivilDate, totalDays: number): string {
  const age = spokenAge(origin, on, totalDays);
  if (age.unit === 'weeks') {
    const parts = [
      ...(age.weeks > 0 ? [`${age.weeks} wk`] : []),
      ...(age.days > 0 ? [`${age.days} d`] : []),
    ];
    if (parts.length === 0) return '0 d';
    return parts.join(' ') + (age.before ? ' before term' : '');
  }
  return `${age.months} mo` + (age.weeks > 0 ? ` ${age.weeks} wk` : '');
}

/** The corrected age on a date, in words. */
export const correctedWords = (ages: Ages): string =>
  ages.correctedDays === 0 ? 'at term' : ageWords(ages.due, ages.on, ages.correctedDays);

/** The chronological age, in words. */
export const chronologicalWords = (ages: Ages, born: CivilDate): string =>
  ageWords(born, ages.on, ages.chronologicalDays);

/** The age that counts: `5 mo 1 wk corrected`, `9 mo chronological`. */
export const countedWords = (ages: Ages, born: CivilDate): string =>
  ages.counts === 'corrected'
    ? `${correctedWords(ages)} corrected`
    : `${chronologicalWords(ages, born)} chronological`;

/** A place on the axis without a child: `32w0d` before term, `4.5 mo` after. */
export const axisWords = (day: AxisDay): string =>
  day < TERM_DAYS ? formatGestation(Math.round(day)) : `${Math.round(toMonths(day) * 10) / 10} mo`;

/** A span on the axis: `25 to 30 wk of gestation`, `2 to 6 mo`. */
export function spanWords(from: AxisDay, to: AxisDay | null): string {
  const one = (day: AxisDay): string =>
    day < TERM_DAYS
      ? `${Math.round((day / 7) * 10) / 10} wk of gestation`
      : `${Math.round(toMonths(day) * 10) / 10} mo`;
  if (to === null) return `later than ${one(from)}`;
  const [a, b] = [one(from), to === TERM_DAYS && from < to ? 'term' : one(to)];
  const unit = a.replace(/^[\d.]+ /, '');
  return b.endsWith(unit) ? `${a.slice(0, -unit.length).trim()} to ${b}` : `${a} to ${b}`;
}

/** Which age counts, and why. */
export function whyCounts(ages: Ages, pretermBelowDays: number, untilMonths: number): string {
  const born = formatGestation(ages.gestationalDays);
  const limit = formatGestation(pretermBelowDays);
  switch (ages.why) {
    case 'born-early':
      return `Born at ${born}, before ${limit}, and not past a chronological age of ${untilMonths} months: the corrected age counts.`;
    case 'born-at-term':
      return `Born at ${born}, not before ${limit}: the chronological age counts.`;
    case 'past-limit':
      return `Past a chronological age of ${untilMonths} months: the chronological age counts.`;
  }
}

/** How far the due date can be trusted. */
export const doubtWords = (sdDays: number): string =>
  sdDays === 0
    ? 'The age is exact.'
    : `The due date can be off: 95 of 100 such dates are within ${Math.round(1.96 * sdDays)} days.`;

/** How a moment is said: by its date, or, where no date may be told, by the child's age. */
export interface When {
  /** Bare: `18 May 2026`, `5 mo 1 wk corrected`. */
  bare(on: CivilDate): string;
  /** With its word: `on 18 May 2026`, `at 5 mo 1 wk corrected`. */
  at(on: CivilDate): string;
}

export const BY_DATE: When = { bare: dateWords, at: (on) => `on ${dateWords(on)}` };

/** Moments by the age that counts; `agesOn` reads it on a date, before birth it is not asked. */
export function byAge(born: CivilDate, agesOn: (on: CivilDate) => Ages): When {
  const bare = (on: CivilDate): string => countedWords(agesOn(on), born);
  return { bare, at: (on) => `at ${bare(on)}` };
}
