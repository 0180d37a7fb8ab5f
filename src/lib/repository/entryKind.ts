/** What a kind of entry must tell of itself to be kept in step with the store. */
import type { Change, Table } from '../store/rows.ts';
import type { Part } from './partRows.ts';

/** What comes of two changes to one entry. Undefined: it is gone. */
export interface Outcome<T> {
  value: T | undefined;
  /** Rows that must be written with it, such as what has to be asked of the user. */
  beside?: readonly Change[];
  /** An entry of its own, where both are kept as they are. */
  also?: { id: string; value: T };
}

/** Two changes to one entry: as it was, as it is here, as it is in the store. Undefined: not there. */
export interface Both<T> {
  id: string;
  base: T | undefined;
  mine: T | undefined;
  theirs: T | undefined;
}

export interface Shape<T> {
  table: Table;
  write: (value: T) => string;
  /** Undefined where the text is not understood: such a row is left as it is. */
  read: (id: string, text: string) => T | undefined;
  merge: (both: Both<T>) => Outcome<T>;
  /** What a change takes out of an entry that is to lie in the bin by itself. */
  gone?: (before: T, after: T, id: string) => readonly Part[];
  /** Waits for what reading and writing need. */
  ready?: () => Promise<unknown>;
  /** What the page shows now. */
  shown: () => ReadonlyMap<string, T>;
  /** Shows what has come from the store; undefined takes it away. */
  settle: (values: ReadonlyMap<string, T | undefined>) => void;
  /** The store was read. */
  wasRead?: () => void;
}
