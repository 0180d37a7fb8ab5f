/** What can be wrong in a cell of a sheet, and which cell it is. */
import type { CivilDate } from '../../age/civil.ts';
import type { Side } from '../../atlas/types.ts';
import type { Problem } from '../../case/problem.ts';
import type { SheetField } from './columns.ts';
import type { DateOrder } from './dates.ts';

export type CellFault =
  | { code: 'empty' }
  | { code: 'bad-date'; text: string; order: DateOrder }
  | { code: 'undecided'; text: string }
  | { code: 'no-side'; reflex: string; has: readonly Side[] }
  | { code: 'no-child'; text: string }
  /** A column names the child, and its cell is empty. */
  | { code: 'unnamed' }
  /** So many children here have the label, and the birth date, where it is given, does not part them. */
  | { code: 'several'; text: string; count: number; born: CivilDate | undefined }
  | { code: 'none-of-several'; text: string; count: number; born: CivilDate }
  | { code: 'gestation'; text: string }
  | { code: 'other-birth'; text: string; here: CivilDate }
  /** An earlier row of the same new child says otherwise: what it gives, and in which field. */
  | { code: 'other-row'; first: number; of: SheetField; before: string; now: string }
  | { code: 'too-many-visits'; limit: number }
  | { code: 'recorded-otherwise'; here: string; now: string }
  | { code: 'twice'; first: number }
  /** Two columns of one row answer for the same reflex and side, each with another response. */
  | { code: 'differs'; other: number; before: string; now: string }
  /** The visit has another note: one given by that row, or the one that is here. */
  | { code: 'other-note'; first: number | undefined }
  | { code: 'record'; problem: Problem };

/** A cell that is wrong: the row as the sheet counts it, and the column, where the field has one. */
export type CellProblem = CellFault & {
  row: number;
  field: SheetField;
  /** Counted from 0. */
  column: number | undefined;
  /** So many more cells are wrong in the same way and are mended by the same choice. */
  more: number;
};

/** By what a choice on the page mends many cells: a word that gets a meaning, a column that gets a side. */
export function mendedBy(
  field: SheetField,
  column: number | undefined,
  fault: CellFault,
): string | undefined {
  if (fault.code === 'undecided') return `${field} ${fault.text}`;
  if (fault.code === 'no-side') return `${column ?? ''} ${fault.reflex}`;
  return undefined;
}

/** The field a problem of the record lies in. */
export function fieldOf({ at: { field } }: Problem): SheetField {
  if (field === 'on') return 'date';
  if (field === 'label') return 'child';
  const fields: readonly SheetField[] = ['born', 'gestation', 'due', 'examiner', 'note', 'side'];
  return fields.find((one) => one === field) ?? 'reflex';
}
