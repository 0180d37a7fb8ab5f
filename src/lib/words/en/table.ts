/** English for the conference: the question, what all sources agree on, what depends on a source or the due date, decisions, agreement. */
import type { CivilDate } from '../../age/civil.ts';
import type { Kappa } from '../../cohort/kappa.ts';
import type { ShareInterval } from '../../number/wilson.ts';
import { dateWords } from './ages.ts';

export const tablePage = {
  title: 'Conference',
  question: 'The question to the team',
  questionHelp: 'Saved with the child. Write what is to be decided.',
  step: 'Visits',
  earlier: 'Earlier visit',
  later: 'Later visit',
  of: (number: number, count: number): string => `visit ${number} of ${count}`,
  keys: 'Page Up and Page Down step through the visits.',
  full: 'Full screen',
  leaveFull: 'Leave full screen',
  beside: 'Side by side with',
  nothing: 'nothing',
  visits: 'Another visit',
  children: 'Another child',
  firm: 'All sources agree',
  firmHelp: 'Every source that gives an age supports it.',
  firmFits: (n: number): string => `${n} more, not flagged`,
  noFirm: 'On none of the flagged findings do all sources agree.',
  hangs: 'Depends on the due date or the source',
  noHangs: 'No finding depends on the due date or the source.',
  hangsFits: 'Not flagged, but depending on the due date or the source:',
  text: 'Text',
  noVisits: 'No visit is recorded yet.',
  one: 'Reflex',
  what: 'Change',
  notLooked: 'not tested',
  asks: 'Findings to review',
  nothingAsks: 'Nothing is flagged at the last visit.',
};

export const decisions = {
  title: 'Decisions',
  none: 'No decision is recorded yet.',
  what: 'Decision',
  who: 'Who',
  by: 'By when',
  byHelp: 'Year-month-day, optional.',
  add: 'Record the decision',
  taken: (on: CivilDate): string => `decided ${dateWords(on)}`,
  due: (by: CivilDate): string => `by ${dateWords(by)}`,
  overdue: 'past its date',
  done: 'done',
  isDone: (text: string): string => `Done: ${text}`,
  remove: 'Remove',
};

/** Two places, and no minus before a nought. */
const two = (value: number): string => value.toFixed(2).replace(/^-(0\.00)$/, '$1');

export const agreement = {
  title: 'Agreement between examiners',
  help: 'Of visits on one date by two examiners: the same reflex and side, response beside response.',
  here: 'In this child',
  everywhere: 'In all children saved here',
  none: 'No two named examiners saw this child on one date.',
  pair: (first: string, second: string): string => `${first} and ${second}`,
  raw: 'Same response',
  rawValue: (same: number, n: number, interval: ShareInterval | null): string =>
    n === 0
      ? 'no pair in which both recorded a response'
      : `${same} of ${n} (${Math.round((100 * same) / n)} %)${
          interval
            ? `, 95 % interval ${Math.round(100 * interval.low)} to ${Math.round(100 * interval.high)} %`
            : ''
        }`,
  kappa: 'Kappa (Cohen)',
  weighted: 'Kappa, linear weights over the five ordered responses',
  kappaValue: (kappa: Kappa): string => {
    switch (kappa.code) {
      case 'estimated':
        return `${two(kappa.kappa)}, 95 % interval ${two(kappa.interval.low)} to ${two(kappa.interval.high)}`;
      case 'no-pairs':
        return 'no pair to compute it from';
      case 'one-answer':
        return 'not defined: both recorded the same response throughout';
    }
  },
  leftOut: (n: number): string =>
    n === 1
      ? '1 pair left out: not assessable, or not elicited in an unsuitable state.'
      : `${n} pairs left out: not assessable, or not elicited in an unsuitable state.`,
  few: (n: number, enough: number): string =>
    `Few pairs (${n}): the intervals of kappa hold for large numbers only, and below ${enough} they are rough. Read the findings themselves.`,
  differ: 'Where they differ',
  noDifference: 'They agree throughout.',
  steps: (steps: number | null): string =>
    steps === null ? 'cannot be compared' : steps === 1 ? '1 step apart' : `${steps} steps apart`,
};
