/** English for a clinic's own sheet: its columns, its words, what it would add, and what is wrong in a cell. */
import type { SheetShape } from '../../exchange/sheet/answers.ts';
import type { CellProblem } from '../../exchange/sheet/problems.ts';
import type { SheetField } from '../../exchange/sheet/columns.ts';
import type { DateOrder } from '../../exchange/sheet/dates.ts';
import type { SheetProblem } from '../../exchange/sheet/read.ts';
import type { SheetSide, Valued } from '../../exchange/sheet/values.ts';
import type { Side } from '../../atlas/types.ts';
import { mendWords } from './problems.ts';

export const fields: Readonly<Record<SheetField, string>> = {
  reflex: 'Reflex',
  side: 'Side',
  response: 'Response',
  date: 'Date of the visit',
  child: 'Child',
  examiner: 'Examiner',
  state: 'State of the infant',
  note: 'Note',
  born: 'Birth date',
  gestation: 'Gestation at birth',
  due: 'Due date',
};

export const orders: Readonly<Record<DateOrder, string>> = {
  'year-month-day': 'year, month, day',
  'day-month-year': 'day, month, year',
  'month-day-year': 'month, day, year',
};

export const sheetSides: Readonly<Record<SheetSide, string>> = {
  left: 'left',
  right: 'right',
  midline: 'midline',
  both: 'left and right',
};

/** Why a table is not read, with what to correct. */
export function sheetSentence(problem: SheetProblem): string {
  switch (problem.code) {
    case 'too-large':
      return `The table is about ${problem.megabytes} MB; at most ${problem.limitMegabytes} MB are read. Divide it.`;
    case 'no-table':
      return 'The file is not a table: its first row must name the columns, separated by commas, semicolons or tabs. Save it from the spreadsheet as CSV.';
    case 'no-letters':
      return 'The file holds no text that can be read here. Save it from the spreadsheet as CSV in UTF-8.';
    case 'no-rows':
      return 'The table has names of columns and no row below them.';
    case 'too-many-rows':
      return `The table has more than ${problem.limit} rows, or as many empty ones. Divide it, or take the empty ones out.`;
    case 'too-many-columns':
      return `The table has more than ${problem.limit} columns. Take out those that hold no findings.`;
    case 'long-cell':
      return `Row ${problem.row}: a cell holds more than ${problem.limit} characters, as if a quotation mark were missing. Correct it in the sheet.`;
  }
}

/** A column's letters, as spreadsheets count them: A to Z, AA to ZZ. Common practice, no source. */
const lettersOf = (column: number): string =>
  (column < 26 ? '' : String.fromCharCode(64 + Math.floor(column / 26))) +
  String.fromCharCode(65 + (column % 26));

/** A column by its name; by its letters where it has none, by both where another has the same name. */
export function columnName(header: readonly string[], column: number): string {
  const name = header[column] ?? '';
  if (name === '') return `column ${lettersOf(column)}`;
  const isOne = header.every((other, at) => other !== name || at === column);
  return isOne ? name : `${name} (column ${lettersOf(column)})`;
}

const many = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`;

/** More names than this are only counted. */
const MOST_NAMES = 12;

const listed = (sides: readonly Side[]): string => sides.join(' or ');

function fault(problem: CellProblem, header: readonly string[]): string {
  switch (problem.code) {
    case 'empty':
      return 'is empty; fill it in.';
    case 'bad-date':
      return `"${problem.text}" is not a date that exists, read as ${orders[problem.order]}.`;
    case 'undecided':
      return `"${problem.text}" is not decided; choose its meaning above.`;
    case 'no-side':
      return problem.has.length === 1
        ? `the ${problem.reflex} is recorded on the ${listed(problem.has)} alone; leave the side out.`
        : `the ${problem.reflex} is recorded on ${listed(problem.has)}; name one.`;
    case 'no-child':
      return problem.text
        ? `nobody here is called "${problem.text}", and a new child needs a birth date with the gestation or the due date.`
        : 'no child is named and none is open; choose the column of the child, or open the child first.';
    case 'unnamed':
      return 'is empty; write the child in every row.';
    case 'several':
      return problem.born === undefined
        ? `${problem.count} children here are called "${problem.text}"; give the birth date in this row, or give them different names or codes.`
        : `${problem.count} children here are called "${problem.text}" and were born on ${problem.born}; give them different names or codes.`;
    case 'none-of-several':
      return `${problem.count} children here are called "${problem.text}", and none was born on ${problem.born}; check the date, or give a new child another name or code.`;
    case 'gestation':
      return `"${problem.text}" is not understood; write weeks and days, such as 33w1d.`;
    case 'other-birth':
      return `${problem.text} is not the birth date of the child here (${problem.here}); check the date, or give another child another name or code.`;
    case 'other-row':
      return `says ${problem.now}, and row ${problem.first} gives the ${fields[problem.of].toLowerCase()} ${problem.before} for the same child; correct one, or give two children different names or codes.`;
    case 'too-many-visits':
      return `the child has ${problem.limit} visits with those above, and no more are kept; take rows out.`;
    case 'recorded-otherwise':
      return `says ${problem.now}, and the record says ${problem.here}; the record stays as it is.`;
    case 'twice':
      return `the same reflex, side and visit are already in row ${problem.first}; keep one.`;
    case 'differs':
      return `says ${problem.now}, and "${columnName(header, problem.other)}" says ${problem.before} for the same reflex and side; keep one.`;
    case 'other-note':
      return problem.first === undefined
        ? 'the visit is already here with another note; that note stays as it is.'
        : `row ${problem.first} gives the same visit another note; keep one.`;
    case 'record':
      return mendWords(problem.problem);
  }
}

/** One cell that is wrong, named as the sheet names it: `Row 7, "Result": …`. */
export function cellSentence(problem: CellProblem, header: readonly string[]): string {
  const { row, field, column } = problem;
  const place =
    column === undefined ? fields[field].toLowerCase() : `"${columnName(header, column)}"`;
  const more =
    problem.more > 0 ? ` The same in ${many(problem.more, 'more cell', 'more cells')}.` : '';
  return `Row ${row}, ${place}: ${fault(problem, header)}${more}`;
}

export const sheet = {
  title: 'A sheet of findings',
  from: (name: string, rows: number): string =>
    `${name}: ${many(rows, 'row', 'rows')}. Nothing has changed yet.`,
  columns: 'Contents of the columns',
  shape: 'The sheet has',
  shapes: {
    finding: 'one row for each finding',
    visit: 'one column for each reflex',
  } satisfies Record<SheetShape, string>,
  columnsHelp: {
    finding: 'Reflex, response and date are needed.',
    visit: 'Each row is a visit. A date is needed, and below at least one column of answers.',
  } satisfies Record<SheetShape, string>,
  answers: 'Which column answers for which reflex',
  answersHelp: 'An empty cell means that the reflex was not tested: nothing is recorded.',
  leaveColumn: 'left out',
  answersOf: (reflex: string, side: string | undefined): string =>
    side === undefined ? reflex : `${reflex}, ${side}`,
  sideOfRow: 'side of the row',
  sideUnsaid: 'side not decided',
  leftOutColumns: (names: readonly string[]): string =>
    `${many(names.length, 'column is', 'columns are')} left out: ${names.slice(0, MOST_NAMES).join(', ')}${names.length > MOST_NAMES ? `, and ${names.length - MOST_NAMES} more` : ''}.`,
  lackingAnswers: 'Choose a reflex for at least one column.',
  none: 'no column',
  lacking: (names: readonly string[]): string => `Choose a column for: ${names.join(', ')}.`,
  order: 'Dates are written as',
  orderAsked: ([one = '', other]: readonly string[]): string =>
    other === undefined
      ? `"${one}" could be read in more than one way. Choose how dates are written.`
      : `"${one}" and "${other}" are not written in the same order. Choose how dates are written; those written differently are listed below.`,
  noDates: 'No date in that column can be read.',
  words: 'Meaning of their words',
  wordsHelp: {
    finding: 'Rows with a word that is not decided are left out.',
    visit: 'Answers in a word that is not decided are not added.',
  } satisfies Record<SheetShape, string>,
  wordsOf: {
    reflex: 'Reflexes',
    side: 'Sides',
    response: 'Responses',
    state: 'States of the infant',
  } satisfies Record<Valued, string>,
  undecided: 'not decided',
  leave: {
    finding: 'leave these rows out',
    visit: 'leave these out',
  } satisfies Record<SheetShape, string>,
  wouldAdd: 'To be added',
  nothing: 'Nothing would be added.',
  newChild: 'a new child',
  visit: (on: string, examiner: string, n: number, isHere: boolean): string =>
    `${on}${examiner ? `, ${examiner}` : ''}: ${many(n, 'finding', 'findings')}${isHere ? ' to a visit that is here' : ', a new visit'}`,
  ahead: 'a date in the future',
  same: (n: number): string =>
    `${many(n, 'finding is', 'findings are')} here already, and the same.`,
  left: (shape: SheetShape, n: number): string =>
    `${shape === 'finding' ? many(n, 'row is', 'rows are') : many(n, 'answer is', 'answers are')} left out as you chose.`,
  unanswered: (n: number): string =>
    `${many(n, 'row holds', 'rows hold')} no answer and would add nothing.`,
  wrong: (shape: SheetShape, n: number): string => {
    const cells = many(n, 'cell is', 'cells are');
    if (shape === 'finding')
      return `${cells} wrong; ${n === 1 ? 'its row is' : 'their rows are'} not added.`;
    return `${cells} wrong; the answers that depend on ${n === 1 ? 'it' : 'them'} are not added.`;
  },
  more: (n: number): string => `and ${n} more`,
  add: (n: number): string => `Add ${many(n, 'finding', 'findings')}`,
  cancel: 'Cancel',
  keep: 'Save this mapping as',
  keepHelp: 'Next time, a sheet with the same columns is read the same way.',
  keepButton: 'Save',
  kept: (name: string): string => `Saved as ${name}.`,
  notKept: 'The browser refuses to save it.',
  use: 'Saved mappings',
  using: (name: string): string => `Read as ${name}.`,
  forget: (name: string): string => `Forget ${name}`,
  forgotten: (name: string): string => `Mapping forgotten: ${name}.`,
  unforgotten: (name: string): string => `Undone: ${name} is saved again.`,
};
