/**
 * Ages as a textbook prints them, read into figures: "28 wk", "4-6 mo", "birth", "persists",
 * "later than 12 mo". A number without a unit is refused: 6 weeks and 6 months are both taught.
 */
import type { Printed, PrintedUnit } from './types.ts';

export type AgeProblem =
  'no-unit' | 'not-understood' | 'low-above-high' | 'out-of-range' | 'two-units';

export type StartRead =
  { status: 'given'; printed: Printed } | { status: 'not-stated' } | { problem: AgeProblem };

export type EndRead =
  | { status: 'given' | 'later-than'; printed: Printed }
  | { status: 'persists' | 'not-stated' }
  | { problem: AgeProblem };

/** Words for units. Weeks alone are weeks of gestation from 8 to 45 in a start, else after birth. */
const UNITS: readonly (readonly [RegExp, PrintedUnit | 'weeks'])[] = [
  [/^(?:w|wks?|weeks?)\s*(?:pma|pca|ga|gestation|of gestation|gestational(?: age)?)$/, 'wkPMA'],
  [/^(?:w|wks?|weeks?)\s*(?:after birth|postnatal|of age|old)$/, 'wk'],
  [/^(?:w|wks?|weeks?)$/, 'weeks'],
  [/^(?:m|mo|mos|months?)\s*(?:after (?:birth|term)|of age|old)?$/, 'mo'],
  [/^(?:d|days?)$/, 'd'],
  [/^(?:y|yr|yrs|years?)$/, 'y'],
];

const unitOf = (text: string): PrintedUnit | 'weeks' | undefined =>
  UNITS.find(([form]) => form.test(text))?.[1];

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;
const AGE = new RegExp(
  String.raw`^(?:(?:about|around|approx\.?|by|at|from|until|up to|to|~)\s*)*\s*${NUMBER}\s*([a-z ]*?)\s*(?:(?:-|–|to|through)\s*${NUMBER}\s*)?([a-z ]*)$`,
);
const BLANK = /^(?:|-|–|not stated|n\/?a|\?)$/;
const BIRTH = /^(?:(?:at|from|around|about|by|since) )?(?:birth|newborn|term|at term)$/;
const LIFE =
  /^(?:persists|for life|lifelong|life|throughout life|never|(?:never|does not) (?:integrates?|disappears?|fades?|goes|go))$/;
/** Only the latest age is given: it may go before. */
const AT_LATEST = /^(?:by|until|up to|to) /;
const LATER = /^(?:later than|after|over|beyond|>)\s*/;

/** The first week of gestation and the last that "28 wk" can mean in a start. */
const FIRST_WEEK = 8;
const LAST_WEEK = 45;
const LONGEST_YEARS: Readonly<Record<PrintedUnit, number>> = {
  wkPMA: 60,
  mo: 120,
  wk: 520,
  d: 3650,
  y: 10,
};

function figures(text: string, asPrinted: string, isStart: boolean): Printed | AgeProblem {
  const match = AGE.exec(text);
  if (!match) return 'not-understood';
  const [, first = '', unitBetween = '', second, unitAfter = ''] = match;
  const value = (digits: string): number => Number(digits.replace(',', '.'));
  const low = value(first);
  const high = second === undefined ? low : value(second);
  const words = [unitBetween, unitAfter].map((word) => word.trim()).filter(Boolean);
  if (words.length === 0) return 'no-unit';
  const units = new Set(words.map(unitOf));
  if (units.has(undefined)) return 'not-understood';
  if (units.size > 1) return 'two-units';
  const [said] = units;
  const gestation = isStart && low >= FIRST_WEEK && high <= LAST_WEEK;
  const unit = said === 'weeks' || said === undefined ? (gestation ? 'wkPMA' : 'wk') : said;
  if (low > high) return 'low-above-high';
  if (high > LONGEST_YEARS[unit] || (unit === 'wkPMA' && low < FIRST_WEEK)) return 'out-of-range';
  return { asPrinted, unit, low, high };
}

const clean = (text: string): string => text.trim().toLowerCase().replaceAll(/\s+/g, ' ');

/** When it appears, from a cell. An empty cell is "not stated". */
export function readStart(cell: string): StartRead {
  const text = clean(cell);
  if (BLANK.test(text)) return { status: 'not-stated' };
  if (BIRTH.test(text))
    return { status: 'given', printed: { asPrinted: cell.trim(), unit: 'mo', low: 0, high: 0 } };
  const printed = figures(text, cell.trim(), true);
  return typeof printed === 'string' ? { problem: printed } : { status: 'given', printed };
}

/** When it integrates, from a cell. */
export function readEnd(cell: string): EndRead {
  const text = clean(cell);
  if (BLANK.test(text)) return { status: 'not-stated' };
  if (LIFE.test(text)) return { status: 'persists' };
  const later = LATER.test(text);
  const printed = figures(text.replace(LATER, ''), cell.trim(), false);
  if (typeof printed === 'string') return { problem: printed };
  if (later) return { status: 'later-than', printed: { ...printed, high: null } };
  // a range says by itself from when it may go
  const latest = AT_LATEST.test(text) && printed.low === printed.high;
  return { status: 'given', printed: latest ? { ...printed, atLatest: true } : printed };
}
