/**
 * The one shape in which anything is stored, and the one door to it. Every row of every table is a
 * `StoredRow`: what it says stands in `body` alone, made and read by a codec, so that a label, a date or
 * a note is nowhere else. Writing is all or nothing, and only over what the writer has seen.
 */

/** Tables by name: children, sources and reflexes of one's own, talks, what was removed, what clashed, bookkeeping. */
export const TABLES = ['cases', 'own', 'talks', 'bin', 'clashes', 'small'] as const;
export type Table = (typeof TABLES)[number];

/** A row as it lies in the database. */
export interface StoredRow {
  id: string;
  /** Another after every writing, never the same twice: who read this one has seen this content. */
  rev: string;
  /** When it was written, ms since 1970 by this machine's clock; unknown in rows of older versions. */
  changedAt?: number;
  /** The content as the codec made it. */
  body: unknown;
}

/** A row read: its content as text again. Content that cannot be read is empty text. */
export interface Entry {
  id: string;
  rev: string;
  changedAt: number | undefined;
  text: string;
}

/** Where a row lies, for a codec that binds its content to the place. */
export interface At {
  table: Table;
  id: string;
}

/** Makes and reads the content of rows. A failure to decode is a rejection, and the row stays as it is. */
export interface Codec {
  encode(text: string, at: At): unknown;
  decode(body: unknown, at: At): string | Promise<string>;
  /** A row that says whether what this codec makes belongs here: asked in the transaction that writes. */
  guard?: { at: At; admits(body: unknown): boolean };
}

/** Content as it is. */
export const PLAIN: Codec = {
  encode: (text) => text,
  decode: (body) => (typeof body === 'string' ? body : ''),
};

/** Over whatever is there, or over nothing. */
export const ANY = Symbol('any');

export interface Change extends At {
  /** The `rev` last seen there; undefined where no row was; ANY where it does not matter. */
  base: string | undefined | typeof ANY;
  /** The new content; undefined takes the row away. */
  text: string | undefined;
}

/** What stands where a change would have gone, undefined where no row is. */
export interface Clash extends At {
  entry: Entry | undefined;
}

/** Either everything was written, each row under its new `rev` (undefined: taken away), or nothing was. */
export type Written =
  { ok: true; revs: readonly (string | undefined)[] } | { ok: false; clashes: readonly Clash[] };

/** Why nothing can be written: as codes, the sentences are in words. */
export type Trouble =
  /** No room is left on the disk, or for this page. */
  | 'full'
  /** The browser refuses to keep anything, as in some private windows. */
  | 'denied'
  /** What is stored was written by a newer Tidemark. */
  | 'newer'
  /** Another window has brought the store to a newer version while this one was open. */
  | 'outdated'
  /** Another window writes the same rows again and again: it is tried anew a little later. */
  | 'busy'
  /** The browser gave another reason. */
  | 'failed';

export class StoreError extends Error {
  readonly trouble: Trouble;

  constructor(trouble: Trouble, cause?: unknown) {
    super(trouble, { cause });
    this.trouble = trouble;
  }
}

export interface Rows {
  /** `kept`: in the database. `memory`: gone with the page. `newer`: of a newer Tidemark, read only. */
  readonly kind: 'kept' | 'memory' | 'newer';
  read(table: Table): Promise<Entry[]>;
  /** One row alone: no other is decoded for it. */
  one(at: At): Promise<Entry | undefined>;
  /** Writes all of it in one transaction, or nothing; rejects with a `StoreError`. */
  write(changes: readonly Change[]): Promise<Written>;
  /** Calls back when a table has changed, here or in another window. */
  watch(table: Table, changed: () => void): void;
  close(): void;
}

export const newRev = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(9)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
