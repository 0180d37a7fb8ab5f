/**
 * Every stored row brought from one codec to another, and the lock set, changed or taken away, in one
 * transaction: killed at any moment, the store is as it was or as it shall be.
 */
import Dexie from 'dexie';
import { LOCK_ROW } from './lockCodec.ts';
import { newRev, TABLES, type At, type Codec, type StoredRow, type Table } from './rows.ts';
import { isSealed } from './seal.ts';

type Found = Partial<StoredRow> & { text?: unknown };

export interface Recoding {
  name: string;
  from: Codec;
  to: Codec;
  /** The text of the lock that stands from then on; undefined: none. */
  lock: string | undefined;
  /** The text of the lock that stands before; where another does, nothing is written. */
  was: string | undefined;
  /** Whether rows that are sealed already stay as they are. */
  onlyPlain?: boolean;
}

export interface Recoded {
  /** Rows written anew. */
  written: number;
  /** Rows left as they were, since their content cannot be read. */
  unread: number;
}

/** Another window has set, changed or taken away the lock meanwhile. */
export class LockMoved extends Error {}

/** More rounds than other windows could need for their writing. */
const ROUNDS = 20;

const isLock = ({ table, id }: At): boolean => table === LOCK_ROW.table && id === LOCK_ROW.id;

/** What lies in a row, if it is content that a codec made: text or sealed bytes, of either form. */
const contentOf = (row: Found): unknown => ('body' in row ? row.body : row.text);

/** Whether a row is as it was read. */
function isSame(row: Found | undefined, now: Found | undefined): boolean {
  const [a, b] = [row && contentOf(row), now && contentOf(now)];
  const same =
    isSealed(a) && isSealed(b)
      ? a.length === b.length && a.every((byte, i) => byte === b[i])
      : a === b;
  return row?.rev === now?.rev && same;
}

/** The row with its content made anew; undefined where it cannot be read or is not content. */
async function recoded(row: Found, at: At, from: Codec, to: Codec): Promise<StoredRow | undefined> {
  const content = contentOf(row);
  if (typeof content !== 'string' && !isSealed(content)) return undefined;
  try {
    const text = await from.decode(content, at);
    const body = await to.encode(text, at);
    const { rev = newRev(), changedAt } = row;
    return { id: at.id, rev, ...(changedAt === undefined ? {} : { changedAt }), body };
  } catch {
    return undefined;
  }
}

/** Rejects where the browser refuses to write, or with `LockMoved`; then nothing has changed. */
export async function recode({
  name,
  from,
  to,
  lock,
  was,
  onlyPlain = false,
}: Recoding): Promise<Recoded> {
  const database = await new Dexie(name, { chromeTransactionDurability: 'strict' }).open();
  try {
    const has = new Set(database.tables.map((table) => table.name));
    const tables = TABLES.filter((table) => has.has(table));
    const tableOf = (table: Table) => database.table<Found, string>(table);
    for (let round = 0; round < ROUNDS; round++) {
      // read and made before, since a transaction waits for nothing but the database
      const all: { at: At; row: Found; next: StoredRow | undefined }[] = [];
      for (const table of tables)
        for (const row of await tableOf(table).toArray()) {
          const at = { table, id: String(row.id) };
          if (isLock(at) || (onlyPlain && isSealed(contentOf(row)))) continue;
          all.push({ at, row, next: await recoded(row, at, from, to) });
        }
      const isDone = await database.transaction('rw', tables, async () => {
        const there = await tableOf(LOCK_ROW.table).get(LOCK_ROW.id);
        if ((there && contentOf(there)) !== was) throw new LockMoved();
        for (const table of tables) {
          const now = new Map((await tableOf(table).toArray()).map((row) => [String(row.id), row]));
          const seen = all.filter(({ at }) => at.table === table);
          const others = [...now].filter(
            ([id, row]) => !isLock({ table, id }) && !(onlyPlain && isSealed(contentOf(row))),
          );
          // another window wrote meanwhile: all is read again
          if (others.length !== seen.length) return false;
          if (!seen.every(({ at, row }) => isSame(row, now.get(at.id)))) return false;
        }
        for (const { at, next } of all) if (next) await tableOf(at.table).put(next);
        const small = tableOf(LOCK_ROW.table);
        if (lock === undefined) await small.delete(LOCK_ROW.id);
        else await small.put({ id: LOCK_ROW.id, rev: newRev(), changedAt: Date.now(), body: lock });
        return true;
      });
      if (isDone)
        return {
          written: all.filter(({ next }) => next).length,
          unread: all.filter(({ next }) => !next).length,
        };
    }
    throw new Error('other windows write without end');
  } finally {
    database.close();
  }
}
