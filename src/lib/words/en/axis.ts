/** English for the timeline exercise. */
import { DAYS_PER_WEEK, type AxisDay } from '../../age/axis.ts';
import { axisWords, spanWords } from './ages.ts';

/** Whole weeks, but never none where there is a distance. */
function weeks(days: number): string {
  const n = Math.round(Math.abs(days) / DAYS_PER_WEEK);
  if (n === 0) return 'less than a week';
  return n === 1 ? '1 week' : `${n} weeks`;
}

const tenths = (days: number): string => (days / DAYS_PER_WEEK).toFixed(1);

/** Where an end of a band lies beside the ages that are printed. */
const beside = (days: number): string =>
  days === 0
    ? 'within what the sources print'
    : `${weeks(days)} too ${days < 0 ? 'early' : 'late'}`;

export const axisPage = {
  title: 'Timeline exercise',
  lead: 'Place each band over the ages at which you expect the reflex to be present. Drag its middle or either end. A band drawn to the right edge goes on past it, as for a response that stays for life.',
  keys: 'By keyboard: Tab goes from band to band and to its two ends, arrows move by a week, with Shift by four, Home and End to the edges.',
  defined:
    'The sources’ band spans the ages at which their mean expectation is one half or more. An end within the ages they print is not off at all. Outside, it is as far off as the nearest of them.',
  controls: 'The exercise',
  of: 'Reflexes',
  all: 'All',
  sheet: (n: number): string => `Set ${n}`,
  shuffle: 'Another set',
  compare: 'Compare with the sources',
  clear: 'Start again',
  blank: 'Print a blank sheet',
  solution: 'Print the solution',
  lanes: 'Bands to be placed',
  notPlaced: 'not placed yet',
  whole: (name: string): string => `${name}: the band`,
  begins: (name: string): string => `${name}: its onset`,
  ends: (name: string): string => `${name}: its end`,
  at: (day: number): string => axisWords(day as AxisDay),
  onward: 'past the right edge',
  band: (begins: number, ends: number | null): string =>
    ends === null
      ? `${axisWords(begins as AxisDay)} and on, for life`
      : spanWords(begins as AxisDay, ends as AxisDay),
  result: 'How far from the sources',
  none: 'No band has been placed yet.',
  total: (days: number, bands: number): string =>
    bands === 1
      ? `${tenths(days)} weeks off in all.`
      : `${tenths(days)} weeks off in all over ${bands} bands, ${tenths(days / bands)} a band.`,
  rest: (n: number): string =>
    n === 1 ? '1 band has not been placed.' : `${n} bands have not been placed.`,
  said: (beginsDays: number, endsDays: number): string =>
    beginsDays === 0 && endsDays === 0
      ? 'begins and ends within what the sources print'
      : `begins ${beside(beginsDays)}, ends ${beside(endsDays)}`,
  sources: (band: string): string => `The sources: ${band}.`,
  left: (n: number): string =>
    n === 1
      ? '1 reflex is left out: no source gives both its ages.'
      : `${n} reflexes are left out: no source gives both their ages.`,
  key: {
    placed: 'as placed',
    band: 'the sources’ band',
    printed: 'ages the sources print for its two ends',
  },
  sheetBlank: 'Draw each band from where the reflex appears to where it has integrated.',
  sheetSolution: 'The solution: each band as the sources give it.',
  who: 'Name',
};
