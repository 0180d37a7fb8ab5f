/** English for storage: what is saved, what is not and why, the bin, backups, two windows on one child. */
import type { CivilDate } from '../../age/civil.ts';
import { isDatingMethod } from '../../age/doubt.ts';
import type { Point, VisitName } from '../../case/merge.ts';
import type { BackupProblem, BackupTable } from '../../store/backupFile.ts';
import { dateWords } from './ages.ts';
import { sides } from './atlas.ts';
import { datings, responses, states } from './case.ts';

export { standing, trouble, troubles } from './trouble.ts';

const count = (n: number, one: string, many: string): string =>
  n === 1 ? `1 ${one}` : `${n} ${many}`;

export const page = {
  title: 'Storage and backup',
  lead: 'Every change is saved at once in this browser, on this machine, and nowhere else. A backup is the only other copy.',
  here: 'Saved on this machine',
  standing: {
    opening: 'The records are being opened.',
    saved: 'All changes are saved.',
    saving: 'The last change is being saved.',
    'not-saved': 'The last change is not saved.',
    still: 'Nothing has changed since the page was opened.',
  },
  promise: {
    promised: 'The browser has promised to keep it even when the disk runs short.',
    refused:
      'The browser has not promised to keep it when the disk runs short. It may do so once the page is used often or installed; make backups.',
    unasked:
      'When your first child is added, the browser is asked to keep it even when the disk runs short.',
    ask: 'Ask the browser again',
  },
  link: 'Saved data, backups and the bin',
};

export const backup = {
  title: 'Backup',
  help: 'One file with every child, your own sources, reflexes and talks, the settings, the answers of the self-test and the mappings of sheets. The contents of the bin are not included. It can be opened here or on another machine. Unless it is encrypted, it holds everything in plain text: store it where the records themselves may be stored.',
  save: 'Save a backup',
  saved: 'Backup passed to the browser to be saved.',
  never: 'No backup has been made on this machine.',
  last: (on: CivilDate): string => `Last backup: ${dateWords(on)}.`,
  changed: (n: number): string =>
    n === 0
      ? 'None of your entries has changed since.'
      : `${count(n, 'of your entries has', 'of your entries have')} changed since.`,
  unsaved: (n: number): string =>
    `${count(n, 'of your entries is', 'of your entries are')} not in any backup.`,
  due: (n: number): string => `${count(n, 'entry', 'entries')} changed since the last backup`,
  open: 'Open a backup',
  folder: {
    title: 'Automatic backups',
    help: 'Choose a folder, such as one on a USB stick or a shared drive, and a backup is written there a little after each change: one file a day.',
    choose: 'Choose a folder',
    in: (name: string): string => `Backups are written to the folder “${name}”.`,
    closed: (name: string): string =>
      `The browser must be allowed again to write to the folder “${name}”. Until then no backup goes there.`,
    failed:
      'The folder could not be written to: it may have been removed or be full. No backup goes there; save one by hand, or choose a folder again.',
    held: (name: string): string =>
      `While a lock is set no backup is written to the folder “${name}”: it would be stored there in plain text, as earlier ones are. Save an encrypted one by hand, or allow plain ones there.`,
    plain: 'Allow plain backups there',
    plainUnder: (name: string): string =>
      `Backups are written to the folder “${name}” in plain text, although the records here are encrypted.`,
    hold: 'Write none while a lock is set',
    allow: 'Allow again',
    leave: 'Stop writing there',
    cannot: 'This browser cannot write to a folder automatically. Save a backup by hand.',
  },
};

export const kinds: Record<
  BackupTable | 'small' | 'visits' | 'findings' | 'decisions' | 'steps' | 'answers',
  string
> = {
  cases: 'child',
  own: 'your own source or reflex',
  talks: 'talk',
  small: 'stored beside the records',
  visits: 'visit',
  findings: 'finding',
  decisions: 'decision',
  steps: 'step of a talk',
  answers: 'self-test',
};

/** What the browser keeps beside the records, by the name it is kept under. */
export const small: Readonly<Record<string, string>> = {
  'tidemark-settings': 'Settings',
  'tidemark-questions': 'Answers of the self-test',
  'tidemark-sheets': 'Mappings of sheets',
};

export const preview = {
  title: (on: CivilDate): string => `Backup of ${dateWords(on)}`,
  sum: (fresh: number, changed: number, same: number): string =>
    `${fresh} new, ${changed} changed, ${same} the same.`,
  unread: (n: number): string =>
    `${count(n, 'entry', 'entries')} could not be read and would be left out.`,
  nothing: 'All of it is already here, exactly as in the backup.',
  fresh: 'New',
  freshRest: (n: number): string => `${n} more are not listed yet. They are selected too.`,
  changed: 'Changed',
  replaces:
    'Records that the backup replaces go to the bin as they were, and can be restored from there.',
  changedRest: (n: number): string => `${n} more are not listed yet. Of these, yours are kept.`,
  same: (n: number): string => `The same: ${n}`,
  takes: { mine: 'keep mine', theirs: 'use the backup’s', both: 'keep both' },
  takeNew: 'restore',
  take: 'Restore selected',
  taking: 'Restoring…',
  leave: 'Cancel',
  taken: (n: number): string => `${count(n, 'entry', 'entries')} restored from the backup.`,
  untaken: 'Undone: everything is as it was before the backup was restored.',
};

const NO_BACKUP =
  'The file is not a Tidemark backup. Choose a file that was saved as one. Nothing has changed.';

/** What is wrong with a file that is to be a backup. */
export function backupSentence(problem: BackupProblem): string {
  switch (problem.code) {
    case 'too-large':
      return `The file is about ${problem.megabytes} MB; a backup is at most ${problem.limitMegabytes} MB. Nothing has changed.`;
    case 'cut-short':
      return 'The file ends in the middle, as if a copy was cut short. Copy or save it again, whole. Nothing has changed.';
    case 'newer-backup':
      return `The backup was saved by a newer Tidemark (version ${problem.version}). Update Tidemark to open it. Nothing has changed.`;
    case 'twice':
      return `The backup names one entry twice (${problem.id}), so it was not written by Tidemark. Nothing has changed.`;
    case 'blank':
      return 'The file is empty. Copy or save it again. Nothing has changed.';
    case 'not-a-backup':
      if (problem.kind === 'case')
        return 'The file is one child’s case, not a backup. Open it under Children. Nothing has changed.';
      if (problem.kind === 'talk')
        return 'The file is a talk, not a backup. Open it under Teach. Nothing has changed.';
      return NO_BACKUP;
    case 'too-deep':
      return NO_BACKUP;
  }
}

export const bin = {
  title: 'Bin',
  help: (days: number): string =>
    `Anything removed (a child, a visit or one of its findings, a decision, a talk or one of its steps) stays here for ${days} days and can be restored.`,
  none: 'The bin is empty.',
  goes: (on: CivilDate): string => `deleted permanently on ${dateWords(on)}`,
  restore: 'Restore',
  restoreOf: (name: string): string => `Restore ${name}`,
  forGood: 'Delete permanently',
  forGoodOf: (name: string): string => `Delete ${name} permanently`,
  empty: 'Empty the bin',
  sure: 'This cannot be undone.',
  cancel: 'Keep',
  link: (n: number): string => `Bin (${n})`,
  unnamed: 'something that cannot be read',
  brought: (name: string): string => `Restored: ${name}.`,
  unbrought: 'Undone: it is in the bin again.',
  not: {
    gone: (name: string): string =>
      `${capital(name)} belongs to something that is not here, or to a visit that now has another date or examiner. Restore that first, or give the visit its date and examiner again.`,
    again: (name: string): string =>
      `${capital(name)} cannot be restored: the visit now has another finding for that reflex and side. Remove that finding first if this one is right. Until then it stays in the bin.`,
    refused: (name: string): string =>
      `${capital(name)} cannot be restored at present: a visit of that date and examiner may already exist, or the record is full. It stays in the bin.`,
  },
};

/** What is in the bin, as far as it can be read: what it is called, and what it was taken out of. */
export type BinnedIs =
  | { kind: 'cases' | 'own' | 'talks'; name: string }
  | { kind: 'visits'; on: string; examiner: string; of: string | undefined }
  | {
      kind: 'findings';
      reflex: string;
      side: string;
      response: string;
      on: string;
      examiner: string;
      of: string | undefined;
    }
  | { kind: 'decisions'; on: string; text: string; of: string | undefined }
  | { kind: 'steps'; caption: string; of: string }
  | { kind: 'answers' };

/** What is in the bin, by name: a child, or what was taken out of one that stays. */
export function binnedWords(item: BinnedIs): string {
  switch (item.kind) {
    case 'visits':
      return `${of(item.of)}${visitWords(item)}`;
    case 'findings':
      return [
        `${of(item.of)}${item.reflex}`,
        ...(item.side === 'midline' ? [] : [wordOf(sides, item.side) ?? item.side]),
        wordOf(responses, item.response) ?? item.response,
        visitWords(item),
      ].join(', ');
    case 'decisions':
      return `${of(item.of)}${item.text}`;
    case 'steps':
      return `${of(item.of)}${item.caption}`;
    case 'answers':
      return 'Answers of the self-test';
    default:
      return item.name;
  }
}

const visitWords = ({ on, examiner }: { on: string; examiner: string }): string =>
  [`visit of ${dateWords(on as CivilDate)}`, ...(examiner ? [examiner] : [])].join(', ');

const of = (whole: string | undefined): string => (whole === undefined ? '' : `${whole}: `);

export const clash = {
  title: 'Changed in two windows',
  help: 'Both windows changed the same entry in different ways. Both versions are kept until you choose. For now the record shows the one saved first.',
  of: (label: string): string => `Which is right for ${label}?`,
  mine: 'saved second',
  theirs: 'saved first',
  decide: 'Keep selected',
  gone: 'The child has been removed since.',
  dismiss: 'Dismiss',
  refused:
    'With this choice the record would contradict itself. Choose differently, or change it by hand.',
};

const FIELDS: Record<string, string> = {
  note: 'note',
  question: 'question for the team',
  archived: 'archive',
  sheet: 'sheet for the next visit',
  family: 'family’s page',
};

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** The visit of a point that was kept before visits had ids: a date, a blank, the examiner. */
function visitIn(name: string): VisitName {
  const [on = '', ...examiner] = name.split(' ');
  return { on, examiner: examiner.join(' ') };
}

/** The date of the decision that a point is about. */
function decidedOn({ mine, theirs, base }: Point): string | undefined {
  const { on } = (mine ?? theirs ?? base ?? {}) as { on?: unknown };
  return typeof on === 'string' ? on : undefined;
}

/** Where a point is: `Visit of 11 May 2026, Alder: Moro reflex, left`. */
export function pointWords(point: Point, reflexName: (id: string) => string): string {
  const [kind, name = '', what, third = '', side = ''] = point.path;
  switch (kind) {
    case 'label':
      return 'Name or code';
    case 'birth':
      return 'Birth and dating';
    case 'invented':
      return 'Fictional';
    case 'tag':
      return 'Tag';
    case 'decision':
      return `Decision of ${decidedOn(point) ?? name}`;
    case 'agreed':
      return `Agreed answer of ${dateWords(name as CivilDate)}: ${reflexName(what ?? '')}, ${third}`;
    case 'visit':
      break;
    default:
      return capital(FIELDS[name] ?? name);
  }
  const { on, examiner } = point.visit ?? visitIn(name);
  const visit = [`Visit of ${dateWords(on as CivilDate)}`, ...(examiner ? [examiner] : [])].join(
    ', ',
  );
  if (what === undefined) return visit;
  if (what === 'date') return `${visit}: date and examiner`;
  if (what === 'finding') return `${visit}: ${reflexName(third)}, ${side}`;
  return `${visit}: ${what === 'milestone' ? third : (FIELDS[third] ?? third)}`;
}

const wordOf = (words: Readonly<Record<string, string>>, code: unknown): string | undefined =>
  typeof code === 'string' && Object.hasOwn(words, code) ? words[code] : undefined;

/** What one of the two said. */
export function valueWords({ path }: Point, value: unknown): string {
  if (value === undefined || value === null || value === '') return 'nothing';
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (path[0] === 'visit' && path.length === 2) return 'the visit as it was changed';
  if (typeof value === 'number') return String(value);
  if (typeof value !== 'object') return '';
  if (path[0] === 'visit' && path[2] === 'date') {
    const { on, examiner } = value as VisitName;
    return [dateWords(on as CivilDate), ...(examiner ? [examiner] : [])].join(', ');
  }
  const { response, state, variant, note, born, due, gestation, dating, text, who, seen } =
    value as Record<string, unknown>;
  if (typeof response === 'string') {
    const [word, infant] = [wordOf(responses, response), wordOf(states, state)];
    return [
      word ?? response,
      ...(infant && state !== 'not-recorded' ? [infant] : []),
      ...(typeof variant === 'string' ? [`variant "${variant}"`] : []),
      ...(note ? [note as string] : []),
    ].join(', ');
  }
  if (typeof born === 'string')
    return [
      `born ${born}`,
      ...(gestation ? [`at ${gestation as string}`] : []),
      ...(due ? [`due ${due as string}`] : []),
      ...(typeof dating === 'string' && isDatingMethod(dating) ? [datings[dating]] : []),
    ].join(', ');
  if (typeof text === 'string') return [text, ...(who ? [who as string] : [])].join(', ');
  if (typeof seen === 'boolean') return seen ? 'seen' : 'not seen';
  return Object.values(value as Record<string, unknown>)
    .flat()
    .map(String)
    .join(', ');
}
