/** English for the page of all children: looking for one, what is flagged in each, what can be done. */
import type { CivilDate } from '../../age/civil.ts';
import type { Ages, Birth } from '../../age/clocks.ts';
import { formatGestation } from '../../age/gestation.ts';
import { chronologicalWords, correctedWords, dateWords } from './ages.ts';

interface Asks {
  discuss: number;
  watch: number;
}

export const page = {
  title: 'Children',
  lead: 'Saved in this browser on this machine, and nowhere else.',
  add: 'New child',
  openHelp: 'a FHIR bundle or a sheet of findings (CSV) too; or drop one anywhere on the page',
  none: 'No child is saved here.',
  unread: 'Records that could not be read',
  examples: {
    add: 'Add sample children',
    adding: 'Adding…',
    failed: 'They could not be loaded. Reload the page to try again.',
    help: 'fictional, to look around with',
    clear: 'Remove sample children',
  },
};

/** In place of a child's page where no child is open. */
export const none = {
  help: 'Begin with a new child, open a case file, or look at the chart without a child.',
  newChild: 'New child',
};

export const filters = {
  title: 'Filters',
  find: 'Find',
  findHelp: 'name or code, tag, examiner',
  more: 'Filter and sort',
  any: 'any',
  age: 'Age now',
  ages: {
    'before-term': 'before term',
    '0-3': 'under 3 months',
    '3-6': '3 to under 6 months',
    '6-12': '6 to under 12 months',
    '12-24': '12 to under 24 months',
    'from-24': '24 months or more',
  },
  asks: 'Status',
  asking: {
    discuss: 'to discuss',
    asking: 'to discuss or recheck',
    nothing: 'nothing flagged',
    unseen: 'not seen yet',
  },
  check: 'Next visit',
  checks: { due: 'due', soon: 'due within 4 weeks' },
  tag: 'Tag',
  examiner: 'Examiner',
  sort: 'Sort by',
  sorts: {
    label: 'name or code',
    age: 'age, youngest first',
    asks: 'most flagged',
    check: 'next visit',
    seen: 'last seen, longest ago first',
  },
  archived: (n: number): string => `With the archive (${n})`,
  all: 'Show all',
};

/** How many of how many. */
export const foundWords = (found: number, of: number): string =>
  found === of ? (of === 1 ? '1 child' : `${of} children`) : `${found} of ${of} children`;

export const list = {
  name: 'Children',
  nobody: 'No child matches.',
  noneBesideArchive: 'Every child is in the archive.',
  weeks: ['weeks of gestation', 'weeks', 'wk'],
  months: ['months after term', 'months', 'mo'],
  term: 'term',
  key: {
    discuss: 'to discuss',
    watch: 'to recheck',
    more: 'and more',
    visit: 'seen',
    born: 'born',
    now: 'today',
  },
  about: 'How to read this',
  strip:
    'Every strip is the child’s own chart in one row, all on one axis: birth, each day seen, and above it one mark for each reflex that was flagged on that day, by any examiner. The vertical line is the age today, and a bar at its top shows the uncertainty of the due date. A child born early is placed by the corrected age, as everywhere.',
  due: 'A child not seen yet is due from birth.',
  open: 'open now',
  invented: 'fictional',
  archived: 'archived',
  unborn: (on: CivilDate): string => `birth date in the future: ${dateWords(on)}`,
};

/** `2 to discuss, 1 to recheck`. */
export function asksWords({ discuss, watch }: Asks): string {
  const said = [
    ...(discuss > 0 ? [`${discuss} to discuss`] : []),
    ...(watch > 0 ? [`${watch} to recheck`] : []),
  ];
  return said.length > 0 ? said.join(', ') : 'nothing flagged';
}

export const openWords = (n: number): string =>
  n === 0 ? 'no open question' : n === 1 ? '1 open question' : `${n} open questions`;

/** The age today by every clock, the one that counts first. */
export function clocksWords(ages: Ages, birth: Birth): { counts: string; others: string } {
  const since = `${chronologicalWords(ages, birth.born)} chronological`;
  const corrected = `${correctedWords(ages)} corrected`;
  const weeks = `${formatGestation(ages.postmenstrualDays)} postmenstrual`;
  if (ages.counts !== 'corrected') return { counts: since, others: `${corrected}, ${weeks}` };
  // before term the weeks themselves are what is said
  return ages.correctedDays < 0
    ? { counts: weeks, others: `${correctedWords(ages)}, ${since}` }
    : { counts: corrected, others: `${since}, ${weeks}` };
}

export const more = {
  open: 'More',
  close: 'Less',
  about: (label: string): string => ` about ${label}`,
  born: (on: CivilDate, gestation: string): string => `born ${dateWords(on)} at ${gestation}`,
  visits: (n: number): string => (n === 0 ? 'no visit yet' : n === 1 ? '1 visit' : `${n} visits`),
  last: (on: CivilDate): string => `last ${dateWords(on)}`,
  by: (examiners: readonly string[]): string => `by ${examiners.join(', ')}`,
  tags: 'Tags',
  noTags: 'none yet',
  addTag: 'Add a tag',
  add: 'Add',
  takeOff: (tag: string): string => `Remove the tag ${tag}`,
  saveFile: 'Save to a case file',
  archive: 'Archive',
  takeBack: 'Take out of the archive',
  duplicate: 'Duplicate',
  remove: 'Remove',
};

/** The label of a copy: the first that is free. A label too long for the word is cut before it. */
export function copyLabel(label: string, taken: ReadonlySet<string>, most: number): string {
  for (let count = 1; ; count++) {
    const word = count === 1 ? ' copy' : ` copy ${count}`;
    let kept = label;
    // by whole letters, though the limit counts what they are stored in
    while (kept.length + word.length > most) kept = kept.replace(/.$/su, '');
    const copy = kept.trimEnd() + word;
    if (!taken.has(copy)) return copy;
  }
}

/** A strip for a reader that hears it: the days seen, and what was flagged on each. */
export function stripWords(label: string, days: readonly ({ on: CivilDate } & Asks)[]): string {
  if (days.length === 0) return `${label}: not seen yet`;
  return `${label}, seen ${days.map((day) => `${dateWords(day.on)}: ${asksWords(day)}`).join('; ')}`;
}
