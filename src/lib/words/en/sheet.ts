/** English for the sheet of a visit: what to test, why, by how much it would tell, and the printed form. */
import { TERM_DAYS, type AxisDay } from '../../age/axis.ts';
import type { CivilDate } from '../../age/civil.ts';
import { formatGestation } from '../../age/gestation.ts';
import type { PlanWhy } from '../../judge/plan.ts';
import type { Flag } from '../../judge/rules/rule.ts';
import type { VerdictWord } from '../../judge/verdict.ts';
import { axisWords, dateWords, shortDateWords } from './ages.ts';
import { states } from './case.ts';
import { flags, verdicts } from './judge.ts';

const CHANGES = {
  opening: { name: 'window opening', done: 'there' },
  closing: { name: 'window closing', done: 'gone' },
} as const;

const ageBy = (day: AxisDay): string =>
  day === TERM_DAYS ? 'term' : day < TERM_DAYS ? `${axisWords(day)} of gestation` : axisWords(day);

/** A window that opens or closes, with the date, or the age, by which every source has it done. */
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
      return 'should stand at its height';
    case 'never-tested':
      return 'never tested';
    case 'divided':
      return 'the sources differ at this age';
    case 'silent':
      return 'no chosen source speaks of this age';
    case 'settled':
      return `seen to be ${why.now} on ${shortDateWords(why.on)}`;
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

/** How much an answer tells, in a word. The steps are a choice of ours. */
export const tellsWords = (bits: number): string =>
  bits >= 0.8 ? 'tells much' : bits >= 0.4 ? 'tells something' : 'tells little';

/** What the number is, said once on the page. */
export const TELLS_NOTE =
  'How much an answer would tell runs from 0, when the sources leave no doubt whether the response is there, to 1, when it is as open as the toss of a coin. It is reckoned from the expectation of every source that speaks at this age, averaged over the doubt in the dates: the entropy of a yes-or-no answer, in bits. What was left open last time is a reason of its own and adds nothing to it.';

export const page = {
  title: 'Sheet for the visit',
  on: 'Plan for',
  lead: 'In an order that turns the infant least; what may upset stands last.',
  drop: 'Drop',
  dropped: 'Dropped from this sheet',
  takeBack: 'Take back',
  add: 'Add',
  more: (n: number): string => `Not on the sheet: ${n} more`,
  moreHelp: 'Little to be learnt from them on this date, by the same reckoning.',
  byHand: 'added by hand',
  reset: 'As reckoned',
  changed: 'Changed by hand and kept with the child.',
  otherDate: (date: string): string =>
    `A sheet for ${date} is kept. A change here makes this date’s sheet in its place.`,
  toThat: (date: string): string => `Show the sheet for ${date}`,
  carry: 'Take it over to this date',
  print: 'Print the sheet',
  record: 'Record on the sheet',
  blank: 'A sheet for an age, without a child',
  how: 'How',
  handling: 'Handling',
  gone: (id: string): string =>
    `“${id}” is no longer in the atlas; it stays on the sheet until it is dropped.`,
  off: (name: string): string =>
    `${name} is switched off; it stays on the sheet until it is dropped.`,
};

export const blank = {
  title: 'Sheet for an age',
  lead: 'What is worth testing at an age, to print and fill in by hand. No child is needed, and nothing is kept.',
  gestation: 'Gestation at birth',
  gestationHelp: 'Weeks and days, such as 33w1d; 40w0d when at term.',
  age: 'Age',
  clocks: {
    corrected: 'months corrected',
    birth: 'months since birth',
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
  beforeBirth: 'This age lies before birth; give a later age or another gestation.',
  reads: (age: string, gestation: string): string => `Age ${age}, born at ${gestation}`,
  exact: 'Taken as exact: no doubt in the dates is reckoned with.',
};

/** The age a blank sheet is made for, in the clock that counts. */
export const blankAge = (day: AxisDay, counts: 'corrected' | 'chronological'): string =>
  day < TERM_DAYS
    ? `${formatGestation(Math.round(day))} postmenstrual`
    : day === TERM_DAYS
      ? 'at term'
      : `${axisWords(day)} ${counts === 'corrected' ? 'corrected' : 'since birth'}`;

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
  untouched: 'A line without a tick is not tested. Not assessable: write why.',
  upsetting: 'last, since it may upset',
};
