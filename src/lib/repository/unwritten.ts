/**
 * What was changed and not written yet when its page goes: the store takes a moment that a page which is
 * closed no longer has, the browser's small storage takes none. The next page takes it in.
 */
import * as v from 'valibot';
import { ANY, TABLES, type Change } from '../store/rows.ts';
import { newId } from '../platform/ids.ts';

type Place = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const PREFIX = 'tidemark-unwritten-';
/** One for each page, so that two that go together do not take each other's place. */
const KEY = `${PREFIX}${newId()}`;

const entryShape = v.object({
  id: v.string(),
  base: v.optional(v.string()),
  text: v.optional(v.string()),
});
const shape = v.object({
  entries: v.array(v.object({ table: v.picklist(TABLES), ...entryShape.entries })),
  beside: v.array(
    v.object({ table: v.picklist(TABLES), id: v.string(), text: v.optional(v.string()) }),
  ),
});
/** As pages of before left it: children that were changed. */
const olderShape = v.array(v.object({ ...entryShape.entries, text: v.string() }));

/** An entry of one table as the store was known to have it, and as it was changed; no text: it was removed. */
export interface Unwritten {
  id: string;
  base?: string | undefined;
  text?: string | undefined;
}

/** What one table has left to write: its entries, and the rows that go with them. */
export interface Left {
  entries: readonly Unwritten[];
  /** Rows of other tables, such as a copy in the bin; no text: the row goes. */
  beside: readonly Change[];
}

/** What a page leaves behind, by table. */
export type LeftByTable = Partial<Record<Change['table'], Left>>;

/** What one that writes nothing has left. */
export const NOTHING_LEFT: Left = { entries: [], beside: [] };

export const isAnyLeft = (left: LeftByTable): boolean =>
  Object.values(left).some(({ entries, beside }) => entries.length + beside.length > 0);

/** Says no where the storage is full or denied. */
export function leaveBehind(place: Place | undefined, left: LeftByTable): boolean {
  const entries = Object.entries(left).flatMap(([table, of]) =>
    of.entries.map((entry) => ({ table, ...entry })),
  );
  const beside = Object.values(left).flatMap((of) =>
    of.beside.map(({ table, id, text }) => ({ table, id, text })),
  );
  try {
    if (entries.length + beside.length > 0)
      place?.setItem(KEY, JSON.stringify({ entries, beside }));
    return place !== undefined;
  } catch {
    return false;
  }
}

/** This page goes on after all, and has written what it had. */
export const takeBack = (place: Place | undefined): void => place?.removeItem(KEY);

function readLeft(text: string): LeftByTable {
  const raw: unknown = JSON.parse(text);
  const older = v.safeParse(olderShape, raw);
  if (older.success) return { cases: { entries: older.output, beside: [] } };
  const read = v.safeParse(shape, raw);
  if (!read.success) return {};
  const left: Partial<Record<Change['table'], Left>> = {};
  for (const { table, ...entry } of read.output.entries) {
    const { entries } = left[table] ?? NOTHING_LEFT;
    left[table] = { entries: [...entries, entry], beside: [] };
  }
  // the children's table writes them: whether they lie there already is of no matter
  const beside = read.output.beside.map(({ table, id, text: row }): Change => ({
    table,
    id,
    base: ANY,
    text: row,
  }));
  return { ...left, cases: { entries: left.cases?.entries ?? [], beside } };
}

/** What pages that have gone left behind. It stays there until `done` is called. */
export function leftBehind(place: Place | undefined): {
  left: readonly LeftByTable[];
  done: () => void;
} {
  const keys = Array.from({ length: place?.length ?? 0 }, (_, at) => place?.key(at) ?? '').filter(
    (key) => key.startsWith(PREFIX) && key !== KEY,
  );
  const left = keys.flatMap((key): LeftByTable[] => {
    try {
      return [readLeft(place?.getItem(key) ?? '{}')];
    } catch {
      return [];
    }
  });
  return { left, done: () => keys.forEach((key) => place?.removeItem(key)) };
}
