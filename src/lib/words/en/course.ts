/** English for a child's course: what changed, visit by visit, expected changes, what if. */
import type { CivilDate } from '../../age/civil.ts';
import { formatGestation } from '../../age/gestation.ts';
import type { Side } from '../../atlas/types.ts';
import type { Course } from '../../case/course.ts';
import type { Change, LeftOpen } from '../../judge/changes.ts';
import type { JudgedFinding } from '../../judge/judge.ts';
import type { Fit, FitHidden } from '../../judge/reading/fit.ts';
import { BY_DATE, dateWords, shortDateWords, type When } from './ages.ts';
import { listed } from './body.ts';
import { responses } from './case.ts';
import { fitKind, fitWords } from './inferred.ts';
import { flags, verdicts } from './judge.ts';
import { intervalWords } from './stations.ts';

export { becomesWords } from './tried.ts';

/** `left`, `both sides`; nothing for the midline. */
export const sideWords = (sides: readonly Side[]): string =>
  sides.length > 1 ? 'both sides' : sides[0] === 'midline' || !sides[0] ? '' : sides[0];

const flagWords = ({ raised, finding }: JudgedFinding): string[] =>
  raised.map(({ flag }) => flags[flag]).filter((word) => word !== responses[finding.response]);

/** What a finding means: `persisting, asymmetric`. */
export const meansWords = (found: JudgedFinding): string =>
  [verdicts[found.judged.verdict], ...flagWords(found)].join(', ');

/** How a response moved, in a clause. */
function moveClause({ move, before, since, now }: Change, when: When): string {
  const response = responses[now.finding.response];
  const then = before && since ? `${responses[before.finding.response]} ${when.at(since)}` : '';
  switch (move) {
    case 'first':
      return `tested for the first time: ${response}`;
    case 'came':
      return `present now (${response}), ${then}`;
    case 'came-back':
      return `present again (${response}), ${then}, present before that`;
    case 'went':
      return `not elicited now, ${then}`;
    case 'stronger':
    case 'weaker':
      return `${response}, ${move} than before (${then})`;
    case 'same':
      return `${response} as before`;
  }
}

/** A verdict within a sentence, where its comma would part the sentence. */
const clause = ({ judged: { verdict } }: JudgedFinding): string =>
  verdict === 'missing' ? 'expected but not elicited' : verdicts[verdict];

/** What changed in one reflex, and what that means now. */
export function changeSentence(change: Change, when: When = BY_DATE): string {
  const { before, now } = change;
  const [was, is] = [before && clause(before), clause(now)];
  const verdict = was !== undefined && was !== is ? `was ${was}, now ${is}` : is;
  const meaning = listed([verdict, ...flagWords(now)]);
  return `${moveClause(change, when)}; ${meaning}.`;
}

export const leftOpenSentence = ({ last, since }: LeftOpen, when: When = BY_DATE): string =>
  `${responses[last.finding.response]}, ${meansWords(last)} ${when.at(since)}.`;

/** When it appeared and integrated, as far as the visits show. */
export function courseWords({ state, appeared, integrated }: Course): string {
  switch (state) {
    case 'no-answer':
      return 'no answer yet';
    case 'never-seen':
      return `not elicited ${appeared.after ? `by ${shortDateWords(appeared.after.on)}` : 'yet'}`;
    case 'present':
      return `present (appeared ${intervalWords(appeared)})`;
    case 'gone':
      return `integrated ${intervalWords(integrated)}`;
    case 'returned':
      return 're-emerged';
  }
}

export const coursePage = {
  title: 'Progress',
  changed: 'Changes since the last visit',
  firstVisit: 'This is the first visit: there is nothing to compare with yet.',
  noVisits: 'No visit is recorded yet.',
  at: (on: CivilDate): string =>
    `At the visit of ${dateWords(on)}, each side compared with its own last answer.`,
  nothing: 'Nothing has changed.',
  firsts: 'Tested for the first time, not flagged:',
  same: 'As before, in response and in meaning:',
  leftOpen: 'Flagged when last tested, and no answer this time',
  grid: 'Visit by visit',
  gridHelp: 'Left before right. Below the marks, what the response meant at that age.',
  reflex: 'Reflex',
  course: 'Progress',
  notTested: 'not tested',
  unknown: 'not in the atlas',
  unknownHelp:
    'The reflex is no longer in the atlas (added here, and switched off or removed since). Its findings stay in the record and are not judged.',
  key: 'Key to the marks',
  orders: 'Sequences in this child',
  awaited: 'Expected changes',
  noQuestions: 'No question is open.',
  calendar: 'Save as calendar entries',
  calendarHelp:
    'One all-day entry for each date, without the child’s name or code, to open in any calendar.',
  entryTitle: (reflex: string, sides: string): string =>
    `Recheck: ${[reflex, sides].filter(Boolean).join(', ')}`,
  entryMost: 'Most sources expect the change by this date.',
  entryEvery: 'All sources that give an age expect the change by this date.',
};

const HIDDEN: Readonly<Record<FitHidden, string>> = {
  'too-few': 'too few findings for a best-fitting age',
  'too-wide': 'the findings fit too wide a range of ages',
  'several-modes': 'the findings fit more than one age',
};

/** The best-fitting ages of one visit in a line; where none is shown, why not. */
export function fitLine(fits: readonly Fit[]): string {
  const shown = fits.filter(({ hidden }) => hidden === null);
  if (shown.length > 0)
    return shown.map((fit) => `${fitKind(fit.kind)}: ${fitWords(fit)}`).join('; ');
  const why = fits.flatMap(({ hidden }) => hidden ?? []).find((one) => one !== 'too-few');
  return HIDDEN[why ?? 'too-few'];
}

/** What the best-fitting ages over the visits are set beside. */
export const fitCourse = {
  title: 'Best-fitting age over the visits',
  lead: 'For each visit, the age at which its findings would be most typical, in months after term, with the 90\u00a0% interval.',
  open: 'An arrow has no end on this axis, and no median: the findings fit this age and any beyond it.',
  none: (reflexes: number, milestones: number): string =>
    `A visit has a best-fitting age from ${reflexes} reflexes of one kind, or ${milestones} milestones, on. No visit has one so far.`,
  equal: (isCorrected: boolean): string =>
    isCorrected ? 'equal to corrected age' : 'equal to chronological age',
  term: 'term',
  across: (isCorrected: boolean): string => (isCorrected ? 'corrected age' : 'chronological age'),
  up: 'best-fitting age',
  picture: (isCorrected: boolean): string =>
    `Best-fitting age by ${isCorrected ? 'corrected age' : 'chronological age'}, in months. The same figures are in the list.`,
};

export const whatIf = {
  title: 'What if',
  help: 'Tried, not saved: the record stays as it is.',
  gestation: 'Gestation at birth, tried',
  due: 'Due date, tried',
  dating: 'Dated by',
  sources: 'Sources',
  preterm: 'Corrected if born before',
  until: 'Corrected up to, months',
  asSet: 'as in the settings',
  all: 'all of them',
  byDefault: 'the default',
  kinds: 'One kind',
  single: 'One source',
  allSources: 'all sources',
  defaultSources: 'the default sources',
  limits: (below: string, months: number): string =>
    `corrected if born before ${below}, up to ${months} months`,
  back: 'Back to the record',
  isOn: 'Tried, not the record:',
  recorded: (gestation: string): string => `recorded: ${gestation}`,
  changes: 'Changes at this visit',
  changesNone: 'No verdict of this visit changes.',
  elsewhere: (n: number): string =>
    n === 1 ? '1 verdict changes at another visit.' : `${n} verdicts change at other visits.`,
  turning: 'Gestations at which verdicts change',
  turningHelp: 'Computed for each finding over every gestation at birth from 22w0d to 44w6d.',
  earlier: (was: string, is: string, days: number): string =>
    `${was} → ${is}, if born at ${formatGestation(days)} or earlier`,
  later: (was: string, is: string, days: number): string =>
    `${was} → ${is}, if born at ${formatGestation(days)} or later`,
  turningNone: 'No verdict of this visit depends on the gestation.',
  likely: 'Within the likely error of the dating (95 of 100)',
  unlikely: (n: number): string => (n === 1 ? '1 further away' : `${n} further away`),
  tryIt: 'try',
  badGestation: 'Weeks and days from 22w0d to 44w6d, such as 33w1d.',
  badDue: 'A date that gives a gestation of 22w0d to 44w6d.',
  badUntil: 'Whole months from 0 to 60.',
};
