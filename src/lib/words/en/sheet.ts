/** English for the sheet of a visit: what to test, why, how informative it would be, and the printed form. */
import { TERM_DAYS, type AxisDay } from '../../age/axis.ts';
import type { CivilDate } from '../../age/civil.ts';
import { formatGestation } from '../../age/gestation.ts';
import type { Side } from '../../atlas/types.ts';
import type { PlanWhy } from '../../judge/plan.ts';
import type { Flag } from '../../judge/rules/rule.ts';
import type { VerdictWord } from '../../judge/verdict.ts';
import { axisWords, dateWords, shortDateWords } from './ages.ts';
import { listed } from './body.ts';
import { states } from './case.ts';
import { flags, verdicts } from './judge.ts';

const CHANGES = {
  opening: { name: 'expected to appear', done: 'present' },
  closing: { name: 'expected to fade', done: 'integrated' },
} as const;

const ageBy = (day: AxisDay): string =>
  day === TERM_DAYS ? 'term' : day < TERM_DAYS ? `${axisWords(day)} of gestation` : axisWords(day);

/** A response that is expected to appear or to fade, with the date, or the age, by which every source has it done. */
function changeWords(why: Extract<PlanWhy, { code: 'opening' | 'closing' }>, on: CivilDate | null) {
  const { name, done } = CHANGES[why.code];
  if (why.by === null) return name;
  const sources = why.byAll ? 'every source' : 'every source that dates it';
  const isPast = why.date !== null && on !== null && why.date <= on;
  const when = why.date === null ? ageBy(why.by) : dateWords(why.date);
  return `${name}: ${done} ${isPast ? 'since' : 'by'} ${when} in ${sources}`;
}

/** Why a reflex is on a sheet, or is left off. `on`: the date of the sheet; null without a child. */
export function whyWords(why: PlanWhy, on: CivilDate | null): string {
  switch (why.code) {
    case 'opening':
    case 'closing':
      return changeWords(why, on);
    case 'at-its-height':
      return 'expected to be established';
    case 'never-tested':
      return 'not tested yet';
    case 'divided':
      return 'sources disagree at this age';
    case 'silent':
      return 'no chosen source gives an age here';
    case 'tells-nothing':
      return 'not expected yet, and its absence gives little information';
    case 'teaching-only':
      return 'listed for teaching: not to be tested in a clinic';
    case 'second-try':
      return `second try${sidesWords(why.sides)}`;
    case 'settled':
      return `${why.now === 'there' ? 'present' : 'integrated'} on ${shortDateWords(why.on)}, no change expected`;
    case 'unread':
      return why.response === 'not-assessable'
        ? `not assessable last time (${shortDateWords(why.on)})`
        : `no answer last time (${shortDateWords(why.on)}): ${states[why.state]}`;
    case 'open-question': {
      const flagged = why.flags.map((flag) => flags[flag as Flag]);
      const verdict =
        why.verdict === 'fits' && flagged.length > 0 ? [] : [verdicts[why.verdict as VerdictWord]];
      return `${[...flagged, ...verdict].join(', ')} last time (${shortDateWords(why.on)})`;
    }
  }
}

/** `, left`, nothing where both sides or none is meant. */
const sidesWords = (sides: readonly Side[]): string =>
  sides.length === 1 && sides[0] !== 'midline' ? `, ${sides[0]}` : '';

/** How informative an answer is, in words. The steps are a choice of ours. */
export const tellsWords = (bits: number): string =>
  bits >= 0.8 ? 'highly informative' : bits >= 0.4 ? 'informative' : 'little information';

/** What the number is, said once on the page. */
export const TELLS_NOTE =
  'How informative an answer would be runs from 0, when the sources leave no doubt whether the response is present, to 1, when it is as open as the toss of a coin. It is computed from the expectation of every source that covers this age, averaged over the doubt in the dates: the entropy of a yes-or-no answer, in bits. What was left open last time is a reason of its own and adds nothing to it.';

/** The parts of a sheet. */
export const parts = {
  flagged: 'Flagged last time',
  core: 'Core set for this age',
  also: 'Also',
  upsetting: 'Last, as they may upset',
  folded: (part: string, lines: number): string => `${part}: ${lines}`,
  every: 'For every test:',
  inCore: 'core set',
  /** @param most how many it holds at most @param months the usual time between two visits */
  coreHelp: (most: number, months: number): string =>
    `Of the responses that the chosen sources expect to be present at this age, or expected to be present ${months} months ago and not now, the ${most} covered by most voices: sources that copy one another are one voice. Of equal ones the more expected is taken. A response seen to have integrated is left out.`,
  coreLast: (names: readonly string[]): string =>
    names.length === 1
      ? `${names[0]} belongs to it and is tested last.`
      : `${listed(names)} belong to it and are tested last.`,
};

/** Minutes with halves: `½`, `1`, `9½`. */
export const minutesWords = (minutes: number): string =>
  `${Math.floor(minutes) || (minutes % 1 ? '' : '0')}${minutes % 1 ? '½' : ''}`;

interface Minutes {
  short: number;
  usual: number;
  upsetting: number;
}

export const ten = {
  title: (minutes: number): string => `Within ${minutes} minutes`,
  lead: (minutes: number): string =>
    `Findings flagged last time, then the most informative tests in this child, in about ${minutesWords(minutes)} minutes:`,
  leadBlank: (minutes: number): string =>
    `The most informative tests together, in about ${minutesWords(minutes)} minutes:`,
  minutes: (minutes: number): string => `${minutesWords(minutes)} min`,
  none: 'Nothing would add information on this date.',
  how: 'How it is chosen',
  help: ({ short, usual, upsetting }: Minutes): string =>
    `The minutes are our own estimate: ${minutesWords(short)} for a response tested supine, side-lying or prone, ${minutesWords(usual)} in any other position, both sides included, and ${minutesWords(upsetting)} more where it may upset. Responses flagged last time and those that need a second try come first. Of the others, those are taken whose answers would together lower the uncertainty most: whether each response is present, given the sources and this child’s visits, and which of two came first where that is not yet known. Information that two responses add about one sequence is counted once.`,
  bits: (bits: number): string => `Together ${bits.toFixed(1)} bits.`,
};

export const again = {
  title: 'Second tries',
  help: 'Not elicited once. One miss is common in healthy infants: try again in a quiet, alert state, and record how often it was tried.',
  line: (sides: readonly Side[], on: CivilDate): string =>
    `${sides.length === 1 && sides[0] !== 'midline' ? `${sides[0]}, ` : ''}${shortDateWords(on)}`,
};

export const page = {
  title: 'Sheet for the visit',
  on: 'Plan for',
  lead: 'Ordered to reposition the infant least; upsetting tests last.',
  nothing: 'Nothing would be informative on this date.',
  drop: 'Remove',
  dropped: 'Removed from this sheet',
  takeBack: 'Put back',
  add: 'Add',
  more: (n: number): string => `Not on the sheet: ${n} more`,
  moreHelp: 'Little information on this date, by the same measure.',
  byHand: 'added by hand',
  reset: 'Reset to suggested',
  changed: 'Changed by hand and saved with the child.',
  otherDate: (date: string): string =>
    `A sheet for ${date} is saved. A change here replaces it with a sheet for this date.`,
  toThat: (date: string): string => `Show the sheet for ${date}`,
  carry: 'Move it to this date',
  print: 'Print the sheet',
  record: 'Record findings',
  blank: 'A sheet for an age, without a child',
  how: 'Technique',
  handling: 'Handling and technique',
  gone: (id: string): string =>
    `“${id}” is no longer in the atlas; it stays on the sheet until it is removed.`,
  off: (name: string): string =>
    `${name} is switched off; it stays on the sheet until it is removed.`,
};

export const blank = {
  title: 'Sheet for an age',
  lead: 'The tests worth doing at an age, to print and fill in by hand. No child is needed, and nothing is saved.',
  gestation: 'Gestation at birth',
  gestationHelp: 'Weeks and days, such as 33w1d; 40w0d when at term.',
  age: 'Age',
  clocks: {
    corrected: 'months corrected',
    birth: 'months chronological',
    gestation: 'postmenstrual',
  },
  ageHelp: {
    corrected: 'Such as 5 or 5.5.',
    birth: 'Such as 7 or 7.5.',
    gestation: 'Such as 36w0d.',
  },
  clock: 'Counted as',
  badMonths: 'Write months as a number up to 60, such as 5 or 5.5.',
  badGestation: 'Write weeks and days between 22w0d and 44w6d, such as 33w1d.',
  badPostmenstrual: 'Write weeks and days, such as 36w0d.',
  beforeBirth: 'This age is before birth; give a later age or another gestation.',
  reads: (age: string, gestation: string): string => `Age ${age}, born at ${gestation}`,
  exact: 'The age is taken as exact.',
};

/** The age a blank sheet is made for, in the clock that counts. */
export const blankAge = (day: AxisDay, counts: 'corrected' | 'chronological'): string =>
  day < TERM_DAYS
    ? `${formatGestation(Math.round(day))} postmenstrual`
    : day === TERM_DAYS
      ? 'at term'
      : `${axisWords(day)} ${counts === 'corrected' ? 'corrected' : 'chronological'}`;

export const printed = {
  label: 'Child',
  date: 'Date',
  age: 'Age',
  examiner: 'Examiner',
  state: 'State',
  stateHelp: 'tick one; note a change beside the line',
  left: 'Left',
  right: 'Right',
  midline: 'Midline',
  note: 'Note',
  reflex: 'Reflex or reaction',
  handling: 'Handling',
  untouched: 'A line without a tick counts as not tested. If not assessable, write why.',
  upsetting: 'last, as it may upset',
};
