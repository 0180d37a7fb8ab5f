/** English for sources and reflexes of one's own: the pages, and what is to be corrected in a cell. */
import type { AgeProblem } from '../../atlas/asPrinted.ts';
import type { FieldProblem } from '../../atlas/own.ts';
import type { CellProblem, Column } from '../../atlas/ownTable.ts';
import type { TrunkToken, LimbToken, EndToken } from '../../atlas/types.ts';
import type { TableProblem } from '../../store/table.ts';

const AGES: Record<AgeProblem, string> = {
  'no-unit':
    'A number without a unit: 6 weeks and 6 months are both taught. Write "6 wk" or "6 mo".',
  'not-understood':
    'Not understood as an age. Write it as printed, such as "28 wk", "4-6 mo", "birth", "persists" or "later than 12 mo".',
  'low-above-high': 'The first age is above the second. Write the earlier one first.',
  'out-of-range': 'Not an age a reflex could have. Check the number and its unit.',
  'two-units': 'Two units in one range. Write both ages in the same unit, such as "4-26 wk".',
};

const TEXT = {
  formula: 'Begins like a formula, which a spreadsheet would run. Begin with a letter or a digit.',
  markup: 'Holds markup or script. Take it out; only plain text is kept.',
} as const;

/** What is wrong with a cell of a source's table, and how to correct it. */
export function cellSentence(problem: CellProblem): string {
  switch (problem.code) {
    case 'unknown-reflex':
      return problem.nearest
        ? 'No reflex of the atlas has this name. Is it this one?'
        : 'No reflex of the atlas has this name. Choose one from the list, or add your own reflex first.';
    case 'twice':
      return `This reflex is already in row ${problem.firstRow + 1}. Keep one of the two.`;
    case 'nothing-stated':
      return 'Neither age is stated. Write when it appears, when it integrates, or both.';
    case 'ends-before-start':
      return 'It would integrate before it appears. Check both ages.';
    case 'formula':
    case 'markup':
      return TEXT[problem.code];
    case 'too-long':
      return `Too long; keep it to ${problem.limit} characters.`;
    default:
      return AGES[problem.code];
  }
}

/** What is wrong with a field of an own source or reflex, and how to correct it. */
export function fieldSentence(problem: FieldProblem): string {
  switch (problem.code) {
    case 'empty':
      return problem.field === 'source'
        ? 'Name the source, such as its authors and year.'
        : 'Give it a name.';
    case 'taken':
      return 'That name is taken, and nothing built in can be overwritten. Give it another.';
    case 'too-long':
      return 'Too long. Keep it short enough for the margin of a lane.';
    case 'nothing-moves':
      return 'Nothing moves yet. Choose a movement for at least one part.';
    case 'nothing-stated':
      return 'No age is stated. Write when it appears, when it integrates, or both.';
    case 'ends-before-start':
      return 'It would integrate before it appears. Check both ages.';
    case 'formula':
    case 'markup':
      return TEXT[problem.code];
    default:
      return AGES[problem.code];
  }
}

export const columns: Record<Column, string> = {
  reflex: 'Reflex',
  appears: 'Appears, as printed',
  integrates: 'Integrates, as printed',
  note: 'Note',
};

/** Why a file was not taken. */
export function tableSentence(problem: TableProblem): string {
  switch (problem.code) {
    case 'too-large':
      return `The file is about ${problem.megabytes} MB; a table is at most 1 MB. It was not read. Choose the CSV file of one source.`;
    case 'no-rows':
      return 'The file names its columns and has no row below them. Add a row for each reflex.';
    case 'too-many-rows':
      return `The file has more than ${problem.limit} rows, more than there are reflexes. Choose the CSV file of one source.`;
    case 'missing-columns':
      return `The file has no column ${problem.missing.map((name) => `"${name}"`).join(', ')}. Its first row must name the columns reflex, appears, integrates and, if you like, note.`;
    case 'unknown-columns':
      return `The file has columns that are not known here: ${problem.unknown.map((name) => `"${name}"`).join(', ')}. Take them out; the columns are reflex, appears, integrates and note.`;
    case 'not-a-table':
      return 'The file is not a table of text. Save it from the spreadsheet as CSV (UTF-8) and choose that file.';
  }
}

export const trunkWords: Partial<Record<TrunkToken, string>> = {
  none: 'not moved',
  flexed: 'flexed',
  extended: 'extended',
  'turned-left': 'turned left',
  'turned-right': 'turned right',
  'tilted-left': 'tilted left',
  'tilted-right': 'tilted right',
  'curved-left': 'curved left',
  'curved-right': 'curved right',
};
export const limbWords: Record<LimbToken, string> = {
  none: 'not moved',
  flexed: 'flexed',
  extended: 'extended',
  abducted: 'abducted',
  adducted: 'adducted',
};
export const endWords: Record<EndToken, string> = {
  none: 'not moved',
  open: 'open',
  closed: 'closed',
};

export const limbNames = {
  head: 'Head',
  trunk: 'Trunk',
  armL: 'Left arm',
  armR: 'Right arm',
  legL: 'Left leg',
  legR: 'Right leg',
  handL: 'Left hand',
  handR: 'Right hand',
  footL: 'Left foot',
  footR: 'Right foot',
} as const;

export const own = {
  title: 'Your own sources and reflexes',
  lead: 'Add a textbook, or a reflex the atlas does not have. It is used in the bands, the verdicts and the list of sources like any other, stays in this browser, and cannot overwrite anything built in.',
  sources: 'Sources',
  reflexes: 'Reflexes',
  noSources: 'No source added yet.',
  noReflexes: 'No reflex added yet.',
  newSource: 'Type in a source',
  newReflex: 'Describe a reflex',
  openCsv: 'Open a CSV file',
  dropHelp: 'or drop one on this page. Its columns are reflex, appears, integrates, note.',
  template: 'Save a template (CSV)',
  dropping: 'Drop to open the table.',
  edit: 'Change',
  save: 'Save as CSV',
  remove: 'Remove',
  on: 'in use',
  off: 'switched off',
  switchOff: 'Switch off',
  switchOn: 'Switch on',
  of: (what: string, name: string): string => `${what}: ${name}`,
  rows: (n: number): string => (n === 1 ? '1 reflex' : `${n} reflexes`),
  inUse: (children: number): string =>
    children === 1
      ? 'A child here has findings on it, so it is not removed. Switch it off instead.'
      : `${children} children here have findings on it, so it is not removed. Switch it off instead.`,
  unread: 'It names something that is no longer there, so it is not used until it is changed.',
  damaged: (n: number): string =>
    n === 1
      ? 'One stored entry could not be read. It is left as it is.'
      : `${n} stored entries could not be read. They are left as they are.`,
  full: 'The last change could not be saved: the browser has no room left. Save your sources as CSV.',
  undo: 'Undo',
  redo: 'Redo',
  close: 'Close',
  did: {
    added: 'Added: it is used from now on.',
    changed: 'Changed.',
    removed: 'Removed.',
    'switched-on': 'Switched on: it is used again.',
    'switched-off': 'Switched off: it is kept and not used.',
    'brought-back': 'Restored.',
  },
  undid: {
    added: 'Undone: it is removed again.',
    changed: 'Undone: it is as before.',
    removed: 'Undone: it is back.',
    'switched-on': 'Undone: it is switched off again.',
    'switched-off': 'Undone: it is used again.',
    'brought-back': 'Undone: it is as it was before.',
  },
};

export const sourceForm = {
  newTitle: 'Your own source',
  editTitle: (name: string): string => `Change ${name}`,
  name: 'Name',
  nameHelp: 'Short enough for the margin of a lane: authors and year, or the title.',
  tier: 'Kind',
  lead: 'A row for each reflex, ages as they are printed. They are read as you type.',
  row: (n: number): string => `row ${n}`,
  cell: (column: string, row: number): string => `${column}, row ${row}`,
  removeRow: (n: number): string => `Remove row ${n}`,
  remove: 'Remove',
  take: (name: string): string => `Use ${name}`,
  undo: 'Undo',
  redo: 'Redo',
  keep: 'Save and use',
  change: 'Save the change',
  waiting: (n: number): string =>
    n === 1
      ? 'One cell must be corrected first. Nothing you typed is lost.'
      : `${n} cells must be corrected first. Nothing you typed is lost.`,
  empty: 'Type at least one row.',
  preview: 'Preview',
  previewHelp: 'Each row that can be read, beside the other sources.',
  noPreview: 'A row that can be read is drawn here at once.',
  noSuch: 'There is no such source here.',
  back: 'Back to your own sources and reflexes',
};

export const reflexForm = {
  newTitle: 'Your own reflex',
  editTitle: (name: string): string => `Change ${name}`,
  name: 'Name',
  group: 'Group',
  kind: 'Kind',
  position: 'Position',
  stimulus: 'Elicited by',
  sides: 'Examined',
  sideWords: { pair: 'left and right', midline: 'on the midline' },
  limbs: 'Movement of each part',
  limbsHelp: 'A one-sided stimulus is taken as on the left. The figure follows at once.',
  ages: 'Ages, as each source prints them',
  addAge: 'Another source',
  source: 'Source',
  tier: 'Kind of source',
  removeAge: (n: number): string => `Remove source ${n}`,
  joins: (apart: string): string =>
    `It shows limb dissociation (${apart}), so it joins that sequence automatically.`,
  joinsNone: 'It shows no limb dissociation, so it joins no sequence of limbs.',
  keep: 'Save and use',
  change: 'Save the change',
  waiting: (n: number): string =>
    n === 1
      ? 'One entry must be corrected first. Nothing you typed is lost.'
      : `${n} entries must be corrected first. Nothing you typed is lost.`,
  preview: 'Place on the chart',
  figure: (name: string): string => `The response of ${name || 'the reflex'}`,
  noSuch: 'There is no such reflex here.',
};
