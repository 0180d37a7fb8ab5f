/** A sheet as lines of one finding each, whatever its shape; each line knows the cell it came from. */
import type { Answers, SheetShape } from './answers.ts';
import type { Columns, SheetField } from './columns.ts';
import type { DateOrder } from './dates.ts';
import type { SheetRow } from './read.ts';
import { readAs, type Valued, type Values } from './values.ts';

export interface Mapping {
  columns: Columns;
  /** The columns that answer, where each row is a visit; undefined where it is one finding. */
  answers?: readonly Answers[] | undefined;
  values: Values;
  order: DateOrder;
}

export const shapeOf = ({ answers }: Pick<Mapping, 'answers'>): SheetShape =>
  answers ? 'visit' : 'finding';

export interface Line {
  row: SheetRow;
  /** The column that answers in this line. */
  answers: Answers | undefined;
}

/** The lines of a row: itself, or one for each answer. An empty cell is a reflex that was not looked at. */
export const linesOf = (row: SheetRow, answers: readonly Answers[] | undefined): Line[] =>
  answers
    ? answers
        .filter(({ column }) => (row.cells[column] ?? '') !== '')
        .map((one) => ({ row, answers: one }))
    : [{ row, answers: undefined }];

/** The column that a field is told by: what the name of a column says lies in that column. */
export function columnOf(
  { answers }: Line,
  field: SheetField,
  { columns }: Mapping,
): number | undefined {
  if (!answers) return columns[field];
  if (field === 'reflex' || field === 'response') return answers.column;
  if (field === 'side') return answers.side ? answers.column : (columns.side ?? answers.column);
  return columns[field];
}

/** What stands in the cell of a field; empty where the name of the column says it. */
export function cellOf(line: Line, field: SheetField, mapping: Mapping): string {
  const { row, answers } = line;
  if (answers && field === 'reflex') return '';
  const column = answers && field === 'response' ? answers.column : mapping.columns[field];
  return column === undefined ? '' : (row.cells[column] ?? '');
}

/** What a line says of a kind, as a code: by its column's name, or by the word in its cell. */
export function wordOf(line: Line, kind: Valued, mapping: Mapping): string | undefined {
  const { answers } = line;
  if (answers && kind === 'reflex') return answers.reflex;
  if (answers?.side && kind === 'side') return answers.side;
  return readAs(mapping.values, kind, cellOf(line, kind, mapping));
}
