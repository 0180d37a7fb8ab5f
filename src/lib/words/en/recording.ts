/** English for recording at the infant's side, and for what is asked about a visit's date. */
import type { Side } from '../../atlas/types.ts';
import type { CivilDate } from '../../age/civil.ts';
import type { VerdictWord } from '../../judge/verdict.ts';
import { dateWords } from './ages.ts';
import { verdicts } from './judge.ts';

export const recording = {
  title: (date: string): string => `Recording, ${date}`,
  open: 'Record findings',
  done: 'Done',
  form: 'Date, examiner, milestones',
  state: 'The infant is',
  stateHelp: 'Applies from here on. What is recorded keeps its state.',
  stateOf: 'State for this one',
  notTested: 'not tested',
  left: 'Left',
  right: 'Right',
  midline: 'Midline',
  both: 'both',
  bothSides: (response: string): string => `both sides: ${response}`,
  onSide: (side: Side, response: string): string => `${side}: ${response}`,
  why: (side: Side): string => (side === 'midline' ? 'Why not?' : `Why not, ${side}?`),
  whyHelp: 'Touch a reason or write one.',
  whyMissing: 'No reason yet.',
  comment: (side: Side): string => (side === 'midline' ? 'Comment' : `Comment, ${side}`),
  commentFirst: 'A comment belongs to a response: record one first.',
  missing: (name: string, tries: number): string =>
    tries === 1
      ? `${name}: not elicited, tried once.`
      : `${name}: not elicited, tried ${tries} times.`,
  again: 'Tried once more: still not elicited',
  tested: 'Which was tested',
  testedUnsaid: 'not stated: judged by the ages of both',
  testedHelp: 'Sources give them different ages. It applies to all sides at this visit.',
  tries: 'Tried at this visit',
  triesTimes: (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`),
  previous: 'Back',
  next: 'Skip',
  clear: 'Clear',
  undo: 'Undo',
  keys: 'Keys',
  hand: 'Device in',
  hands: { right: 'the right hand', left: 'the left hand' },
  sheetFrom: (date: string): string => `In the order of the sheet for ${date}.`,
  sheetComputed: 'In the order suggested for this date.',
  beyond: 'Not on the sheet',
  add: 'Add another',
  progress: (done: number, of: number): string => `${done} of ${of} recorded`,
  kept: 'Saved at each touch.',
  notKept: 'Not saved yet:',
  ended: (left: number): string =>
    left === 0
      ? 'The sheet is done.'
      : left === 1
        ? 'End of the sheet. 1 is not tested.'
        : `End of the sheet. ${left} are not tested.`,
  verdict: 'Show the verdict',
  noVerdict: 'Nothing is recorded here to judge.',
  verdictWaits: 'The verdict is shown once the visit is saved.',
  settingTitle: 'While recording',
  setting: 'Show verdicts while recording',
  settingHelp: 'Off by default, so that what was expected does not colour what is seen.',
  now: (name: string, side: string): string => `Now ${name}${side ? `, ${side}` : ''}.`,
};

/** Usual reasons why a response is not assessable. */
export const REASONS = [
  'asleep',
  'crying',
  'would not settle',
  'splint or plaster',
  'line or tube in the way',
  'tender there',
  'position not allowed',
  'no time left',
] as const;

export const keys = {
  title: 'Keys while recording',
  close: 'Close',
  list: [
    ['↑ ↓', 'the previous line, the next line'],
    ['← →', 'the side'],
    ['1 to 5', 'not elicited, weak, elicited, brisk, obligatory'],
    ['Shift with 1 to 5', 'the same on both sides'],
    ['0 or n', 'not assessable'],
    ['Backspace', 'clear the side: not tested'],
    ['s', 'the infant’s state'],
    ['c', 'comment, or why it is not assessable'],
    ['v', 'show the verdict'],
    ['t', 'the last response not elicited: tried once more'],
    ['u or Ctrl+Z', 'undo'],
    ['?', 'this list'],
  ],
} as const;

/** What is asked of a visit's date, and what is said of it. */
export const dates = {
  beforeBirth: (on: CivilDate, born: CivilDate): string =>
    `This date, ${dateWords(on)}, is before the birth date, ${dateWords(born)}. Is the birth date right?`,
  mendBirth: 'No, correct the birth date',
  mendVisit: 'Yes, correct the visit date',
  ahead: (on: CivilDate, today: CivilDate): string =>
    `This date, ${dateWords(on)}, is after today, ${dateWords(today)}. Keep it anyway?`,
  keepAhead: 'Keep it',
  takeToday: 'Use today',
  waitsAnswer: 'Not saved yet: answer the question about the date. Nothing you entered is lost.',
  sorted: (before: CivilDate): string =>
    `Visits are listed by date: this one comes before that of ${dateWords(before)}.`,
  sameDay: (examiner: string): string =>
    examiner
      ? `There is another visit on this date, by ${examiner}.`
      : 'There is another visit on this date, without an examiner.',
  goThere: 'Go to that visit',
  nameExaminer: 'Name another examiner',
};

/** Before a changed due date is taken. */
export const redate = {
  title: (n: number, of: number): string =>
    n === 1 ? `This changes 1 of ${of} verdicts` : `This changes ${n} of ${of} verdicts`,
  shift: (days: number): string =>
    days === 0
      ? 'The due date is unchanged.'
      : `The due date moves ${Math.abs(days)} ${Math.abs(days) === 1 ? 'day' : 'days'} ${days > 0 ? 'later' : 'earlier'}.`,
  take: 'Save the change',
  leave: 'Discard',
  undo: 'It can be undone afterwards.',
  at: (on: CivilDate): string => dateWords(on),
  change: (before: string, after: string): string => `${before} → ${after}`,
};

export const verdictWord = (verdict: VerdictWord | 'not-judged'): string => verdicts[verdict];
