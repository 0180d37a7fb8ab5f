/** English for talks: the list, the page where one is written, the stage and the speaker's window. */
import type { SourceCount } from '../../atlas/families.ts';
import { sourcesWords } from './atlas.ts';

/** What is wrong with a talk file: its code, and in which field of which step (counted from 1). */
interface TalkFault {
  code: string;
  kind?: string | undefined;
  field: string;
  step?: number;
  megabytes?: number;
  limitMegabytes?: number;
  version?: string;
  expected?: string;
  limit?: number;
  text?: string;
  low?: number;
  high?: number;
}

const FIELDS: Readonly<Record<string, string>> = {
  file: 'The file',
  version: 'Version',
  title: 'Title',
  about: 'Purpose',
  steps: 'Steps',
  caption: 'Caption',
  note: 'Note',
  lanes: 'Lanes',
  ageDays: 'Age',
  fromDays: 'Beginning of the range',
  toDays: 'End of the range',
  sources: 'Sources',
  opened: 'Opened lanes',
  orders: 'Sequences',
  figure: 'Figure',
  lit: 'Highlighted lane',
  child: 'Child',
  id: 'Child',
  visits: 'Visits of the child',
  verdicts: 'Verdicts of the child',
};

function mend(fault: TalkFault): string {
  switch (fault.code) {
    case 'too-large':
      return `is about ${fault.megabytes ?? 0} MB; a talk is at most ${fault.limitMegabytes ?? 0} MB. Choose a file that Tidemark saved.`;
    case 'blank':
      return 'is empty. Copy or save it again.';
    case 'not-json':
      return 'is not JSON, so it cannot be a talk. Choose a file that Tidemark saved.';
    case 'cut-short':
      return 'ends in the middle, as if a copy was cut short. Copy or save it again, whole.';
    case 'not-ours':
      if (fault.kind === 'backup')
        return 'is a backup of everything. Open it under Storage and backup.';
      if (fault.kind === 'case') return 'is one child’s case. Open it under Children.';
      return 'is not a Tidemark talk: "format" must be "tidemark-talk". Choose a file that Tidemark saved.';
    case 'newer-version':
      return `was saved by a newer Tidemark (version ${fault.version ?? ''}). Update Tidemark to open it; the file is unchanged.`;
    case 'unknown-version':
      return `names version "${fault.version ?? ''}"; this Tidemark opens version 1.`;
    case 'missing':
      return 'is missing; fill it in.';
    case 'wrong-type':
      return 'is of the wrong kind; choose a file that Tidemark saved.';
    case 'empty':
      return fault.field === 'steps'
        ? 'are missing; a talk has at least one step.'
        : 'is empty; give the talk a title.';
    case 'too-long':
      return `is too long; keep it to ${fault.limit ?? 0} characters.`;
    case 'too-many':
      return `are too many; at most ${fault.limit ?? 0} are taken.`;
    case 'markup':
      return `holds markup or script ("${fault.text ?? ''}"); take it out, only plain text is kept.`;
    case 'bad-name':
      return `"${fault.text ?? ''}" is not a valid name; use letters, digits and hyphens.`;
    case 'out-of-range':
      return `is outside the range of the chart (days ${Math.round(fault.low ?? 0)} to ${Math.round(fault.high ?? 0)} since the last period); correct the number.`;
    default:
      return 'holds characters that cannot be seen, or a line break where none belongs; type it again.';
  }
}

/** One fault as a sentence that names step, field and correction. */
export function faultSentence(fault: TalkFault): string {
  const field = FIELDS[fault.field] ?? fault.field;
  const at = fault.step === undefined ? field : `Step ${fault.step}, ${field.toLowerCase()}`;
  return `${at}: ${mend(fault)}`;
}

interface Lacking {
  reflexes: readonly string[];
  sources: readonly string[];
  orders: readonly string[];
  children: readonly string[];
}

/** What a talk names that is not here. */
export function missingSentence(missing: Lacking): string {
  const parts = [
    ['reflexes', missing.reflexes],
    ['sources', missing.sources],
    ['sequences', missing.orders],
    ['children', missing.children],
  ] as const;
  const said = parts
    .filter(([, ids]) => ids.length > 0)
    .map(([kind, ids]) => `${kind} ${ids.map((id) => `\u201c${id}\u201d`).join(', ')}`);
  return `Not available here: ${said.join('; ')}. They stay in the talk and are left out of the picture.`;
}

export const list = {
  title: 'Talks',
  lead: 'Steps over the live chart, for a lecture room. Each shows the current atlas.',
  quiz: 'Questions for a class, or for yourself',
  axis: 'Timeline exercise',
  ready: 'Ready-made',
  own: 'Your own',
  none: 'None yet. Copy a ready-made talk, or start an empty one.',
  steps: (n: number): string => (n === 1 ? '1 step' : `${n} steps`),
  start: 'Start',
  goOn: (step: number): string => `Continue at step ${step}`,
  look: 'Look through',
  edit: 'Edit',
  copy: 'Copy to edit',
  copyOf: (title: string): string => `${title} (copy)`,
  save: 'Save as file',
  remove: 'Remove',
  of: (act: string, title: string): string => `${act}: ${title}`,
  begin: 'Start an empty talk',
  untitled: 'Untitled talk',
  firstCaption: 'The first step',
  open: 'Open a talk file',
  openHelp: 'A talk saved by Tidemark ends in .talk.json. It can also be dropped here.',
  dropping: 'Drop to open the talk.',
  refused: 'The talk was not opened; nothing has changed.',
  damaged: (n: number): string =>
    n === 1
      ? 'One stored talk could not be read. It is left as it is.'
      : `${n} stored talks could not be read. They are left as they are.`,
  full: 'There is no room left in the browser for this. Save the talk as a file.',
  did: {
    added: 'Talk added.',
    changed: 'Talk changed.',
    removed: 'Talk removed.',
    'brought-back': 'Talk restored.',
  },
  undone: {
    added: 'Undone: the talk is removed again.',
    changed: 'Undone: the talk is as before.',
    removed: 'Undone: the talk is back.',
    'brought-back': 'Undone: it is as it was before.',
  },
  undo: 'Undo',
  redo: 'Redo',
  close: 'Close',
};

export const editor = {
  back: 'All talks',
  notFound: 'There is no such talk here. It may have been removed.',
  reading: 'A ready-made talk cannot be changed. Copy it to edit the copy.',
  title: 'Title',
  about: 'Purpose',
  stepsTitle: 'Steps',
  stepsHelp: 'Drag a step, or move it with Alt and the arrow keys.',
  step: (n: number, caption: string): string => `Step ${n}: ${caption || 'no caption'}`,
  up: 'Up',
  down: 'Down',
  remove: 'Remove step',
  removeNamed: (n: number): string => `Remove step ${n}`,
  moved: (n: number, of: number): string => `Moved to place ${n} of ${of}.`,
  caption: 'Caption',
  captionHelp: 'A short line that can be read from the back of the room.',
  note: 'Your note',
  noteHelp: 'Seen in the speaker\u2019s window only.',
  shows: 'Contents of the step',
  lanes: 'Lanes',
  lanesChosen: (n: number): string => (n === 1 ? '1 lane' : `${n} lanes`),
  sources: 'Sources',
  sourcesBy: { all: 'All', default: 'The default', named: 'Some' },
  sourcesHelp:
    'The default sources are those that Tidemark judges by unless others are chosen, on the day the talk is given.',
  figure: 'Figure',
  noFigure: 'No figure',
  order: 'Sequence on top',
  noOrder: 'No sequence',
  child: 'Child',
  noChild: 'No child',
  childShown: (visits: number, verdicts: boolean): string =>
    visits === 0
      ? 'Kestrel (fictional): ages only'
      : `Kestrel (fictional): up to visit ${visits}${verdicts ? ', with what the sources say' : ''}`,
  view: 'The view',
  viewHelp:
    'Drag the chart, turn the wheel to zoom, move the age marker, open a lane. Then save the view.',
  keepHere: 'Save this view in the step',
  keepNew: 'Save this view as a new step',
  keptHere: 'The view is saved in this step.',
  keptNew: (n: number): string => `Saved as step ${n}.`,
  newCaption: 'New step',
  startHere: 'Start at this step',
};

export const keep = {
  label: 'Save this view as a step of',
  newTalk: 'a new talk',
  act: 'Save',
  kept: (title: string, n: number): string => `Saved as step ${n} of \u201c${title}\u201d.`,
  open: 'Open the talk',
};

export const stage = {
  label: (title: string): string => `Talk: ${title}`,
  of: (n: number, of: number): string => `${n} of ${of}`,
  notFound: 'There is no such talk here.',
  all: (n: SourceCount): string => `all ${sourcesWords(n)}`,
  sources: (names: readonly string[]): string => names.join(', '),
  lanes: (from: number, to: number, of: number): string => `lanes ${from} to ${to} of ${of}`,
  noLanes: 'None of this step\u2019s lanes is available.',
  black: 'The screen is black. B brings the picture back.',
  jump: (digits: string): string => `Step ${digits}: Enter`,
  goes: (words: string): string => `\u2192 ${words}`,
  saysSources: 'Comparison with the sources',
  seen: 'Findings',
  invented: (label: string): string => `${label}, fictional`,
  asks: (attention: string, why: string): string => `${attention}: ${why}`,
  noVerdicts: 'Nothing is flagged.',
  reading: 'A reading of published ages, not a diagnosis.',
  more: (n: number): string => `and ${n} more`,
  next: 'Next step',
  previous: 'Previous step',
  keysTitle: 'Keys',
  keysOpen: 'Keys',
  close: 'Close',
  leave: 'Leave the talk',
  keys: [
    ['Page Down, \u2192, Space', 'next step'],
    ['Page Up, \u2190', 'previous step'],
    ['Home, End', 'first, last'],
    ['a number, Enter', 'that step'],
    ['B', 'black screen'],
    ['P', 'pointer for the audience'],
    ['+, \u2212', 'fewer lanes, larger; more'],
    ['\u2191, \u2193', 'the lanes above, below'],
    ['M', 'the figure moves, or pauses'],
    ['F', 'full screen'],
    ['S', 'speaker\u2019s window'],
    ['D', 'dark or light'],
    ['Esc', 'leave'],
  ],
} as const;

export const speaker = {
  title: 'Speaker\u2019s window',
  step: (n: number, of: number): string => `Step ${n} of ${of}`,
  next: 'Next',
  last: 'This is the last step.',
  noNote: 'No note for this step.',
  clock: 'Clock',
  elapsed: 'Since the start',
  again: 'Set to zero',
  dark: 'The picture is black.',
  previousAct: 'Previous',
  nextAct: 'Next step',
  blackAct: 'Black',
  waiting: 'The stage is not open in this browser. What you do here is followed once it is.',
};
