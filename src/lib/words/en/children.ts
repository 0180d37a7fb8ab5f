/** English for the page of all children: looking for one, what is open in each, what can be done. */
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
  lead: 'Kept in this browser on this machine, and nowhere else.',
  add: 'New child',
  openHelp: 'a FHIR bundle or a sheet of findings (CSV) too; or drop one anywhere on the page',
  none: 'No child is kept here.',
  unread: 'Records that could not be read',
  examples: {
    add: 'Add invented children',
    adding: 'Adding…',
    failed: 'They could not be loaded. Reload the page to try again.',
    help: 'to look around with; they are nobody’s data',
    clear: 'Clear the invented children',
  },
};

export const filters = {
  title: 'Which children',
  find: 'Find',
  findHelp: 'label, tag or examiner',
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
  asks: 'Asks for',
  asking: {
    discuss: 'something to discuss',
    asking: 'something to discuss or watch',
    nothing: 'nothing',
    unseen: 'a first visit',
  },
  check: 'Check',
  checks: { due: 'due', soon: 'due within 4 weeks' },
  tag: 'Tag',
  examiner: 'Examiner',
  sort: 'In order of',
  sorts: {
    label: 'label',
    age: 'age, youngest first',
    asks: 'what asks most',
    check: 'next check',
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
  nobody: 'No child fits this.',
  noneBesideArchive: 'Every child is in the archive.',
  weeks: ['weeks of gestation', 'weeks', 'wk'],
  months: ['months after term', 'months', 'mo'],
  term: 'term',
  key: {
    discuss: 'to discuss',
    watch: 'to watch',
    more: 'and more',
    visit: 'seen',
    born: 'born',
    now: 'today',
  },
  about: 'What this shows',
  strip:
    'Every strip is the child’s own chart made thin, all on one axis: birth, each day seen, and above it one mark for each reflex that asked for attention on that day, by any examiner. The upright line is the age today; a bar on its top is the doubt in the due date. A child born early stands by the corrected age, as everywhere.',
  due: 'A child that was not seen yet is due from birth.',
  open: 'open now',
  invented: 'invented',
  archived: 'archived',
  unborn: (on: CivilDate): string => `birth date ahead: ${dateWords(on)}`,
};

/** `2 to discuss, 1 to watch`. */
export function asksWords({ discuss, watch }: Asks): string {
  const said = [
    ...(discuss > 0 ? [`${discuss} to discuss`] : []),
    ...(watch > 0 ? [`${watch} to watch`] : []),
  ];
  return said.length > 0 ? said.join(', ') : 'nothing asks';
}

export const openWords = (n: number): string =>
  n === 0 ? 'no open question' : n === 1 ? '1 open question' : `${n} open questions`;

/** The age today by every clock, the one that counts first. */
export function clocksWords(ages: Ages, birth: Birth): { counts: string; others: string } {
  const since = `${chronologicalWords(ages, birth.born)} since birth`;
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
  takeOff: (tag: string): string => `Take off the tag ${tag}`,
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

/** A strip for a reader that hears it: the days seen, and what asked on each. */
export function stripWords(label: string, days: readonly ({ on: CivilDate } & Asks)[]): string {
  if (days.length === 0) return `${label}: not seen yet`;
  return `${label}, seen ${days.map((day) => `${dateWords(day.on)}: ${asksWords(day)}`).join('; ')}`;
}
