/** The browser's database behind `Rows`. Nothing else opens, reads or writes it. */
import Dexie, { liveQuery, type Table as DexieTable } from 'dexie';
import {
  ANY,
  newRev,
  PLAIN,
  StoreError,
  type At,
  type Change,
  type Clash,
  type Codec,
  type Entry,
  type Rows,
  type StoredRow,
  type Table,
  type Trouble,
  type Written,
} from './rows.ts';
import { DATABASE } from './names.ts';
import { inSlices } from './slices.ts';
import { LATEST, VERSIONS } from './versions.ts';

/** IndexedDB counts whole numbers; Dexie's versions are tenths of them. */
const NATIVE = 10;

/** So many rows are asked of the browser at once. */
const ROWS_AT_ONCE = 50;

/** A row as it may be found: by an older page that is still open it is written in the older form. */
type Found = Partial<StoredRow> & { text?: unknown };

export interface Opening {
  name?: string;
  codec?: Codec;
  /** What a database holds when it is first made: children by id. */
  seed?: readonly { id: string; text: string }[];
  /** Called when an older page holds the database and it must wait until that is closed. */
  onblocked?: () => void;
  /** Called when a newer page wants the database: this one has let go of it. */
  onoutdated?: () => void;
}

/** Why the browser refused, from its error or those within it. */
export function troubleOf(error: unknown): Trouble {
  for (let at = error, depth = 0; at && depth < 5; depth++) {
    const { name, inner, cause, trouble } = at as Error & { inner?: unknown; trouble?: Trouble };
    if (trouble) return trouble;
    if (name === 'QuotaExceededError') return 'full';
    if (['MissingAPIError', 'SecurityError', 'InvalidStateError'].includes(name)) return 'denied';
    at = inner ?? cause;
  }
  return 'failed';
}

/** The version of the database that is there; 0 where there is none. */
function installed(name: string): Promise<number> {
  const { indexedDB } = Dexie.dependencies;
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(name);
    let isNew = false;
    opening.onupgradeneeded = () => {
      isNew = true; // there was none, and none is made
      opening.transaction?.abort();
    };
    opening.onsuccess = () => {
      const { version } = opening.result;
      opening.result.close();
      resolve(Math.floor(version / NATIVE));
    };
    opening.onerror = (event: { preventDefault(): void }) => {
      event.preventDefault();
      if (isNew) resolve(0);
      else reject(opening.error ?? new Error('the database did not open'));
    };
  });
}

/** What a row says; a row that cannot be read says nothing. */
async function entryOf(row: Found, table: Table, codec: Codec): Promise<Entry> {
  const { rev = '', changedAt, body, text } = row;
  const at: At = { table, id: String(row.id) };
  let read: string;
  try {
    read = 'body' in row ? await codec.decode(body, at) : typeof text === 'string' ? text : '';
  } catch {
    read = '';
  }
  // a row of the older form has no rev: its content stands for one
  return { id: at.id, rev: rev || `text ${read}`, changedAt, text: read };
}

const revOf = (row: Found | undefined): string | undefined =>
  row && (row.rev ?? `text ${typeof row.text === 'string' ? row.text : ''}`);

async function rowOf({ table, id, text = '' }: Change, codec: Codec): Promise<StoredRow> {
  const body = await codec.encode(text, { table, id });
  return { id, rev: newRev(), changedAt: Date.now(), body };
}

/** Opens the database, making it with the seed when it is new. Rejects with a `StoreError`. */
export async function openDatabase({
  name = DATABASE,
  codec = PLAIN,
  seed = [],
  onblocked,
  onoutdated,
}: Opening = {}): Promise<Rows> {
  try {
    const isNewer = (await installed(name)) > LATEST;
    // what is confirmed is on the disk, not only on its way there
    const database = new Dexie(name, {
      chromeTransactionDurability: 'strict',
      cache: 'disabled', // what is read is what lies there, never what is thought to
    });
    if (!isNewer) await prepare(database, seed, codec);
    let isOutdated = false;
    database.on('blocked', () => {
      onblocked?.();
      return false;
    });
    database.on('versionchange', () => {
      isOutdated = true;
      database.close();
      onoutdated?.();
      return false;
    });
    await database.open();
    return rowsOf(database, codec, isNewer, () => isOutdated);
  } catch (error) {
    throw new StoreError(troubleOf(error), error);
  }
}

async function prepare(database: Dexie, seed: Opening['seed'] & {}, codec: Codec): Promise<void> {
  for (const { version, stores, upgrade } of VERSIONS) {
    const one = database.version(version).stores(stores);
    if (upgrade) one.upgrade(upgrade);
  }
  // encoded before, since a transaction does not wait for anything but the database
  const rows = await Promise.all(
    seed.map(({ id, text }) => rowOf({ table: 'cases', id, base: undefined, text }, codec)),
  );
  database.on('populate', (transaction) => {
    void transaction.table('cases').bulkAdd(rows);
  });
}

/** Every row, a few at a time: to hand over all at once would hold the page up. */
async function allOf(table: DexieTable<Found, string>): Promise<Found[]> {
  const rows = await table.orderBy(':id').limit(ROWS_AT_ONCE).toArray();
  for (let read = rows.length; read === ROWS_AT_ONCE;) {
    const rest = table.where(':id').above(rows.at(-1)?.id);
    const part = await rest.limit(ROWS_AT_ONCE).toArray();
    rows.push(...part);
    read = part.length;
  }
  return rows;
}

function rowsOf(database: Dexie, codec: Codec, isNewer: boolean, isOutdated: () => boolean): Rows {
  const has = new Set(database.tables.map(({ name }) => name));
  const tableOf = (table: Table): DexieTable<Found, string> => database.table(table);
  const { guard } = codec;
  /** Whether what the codec made belongs among the rows as they stand at this moment. */
  const isAdmitted = async (): Promise<boolean> =>
    !guard || guard.admits((await tableOf(guard.at.table).get(guard.at.id))?.body);
  return {
    kind: isNewer ? 'newer' : 'kept',
    read: async (table) => {
      if (!has.has(table)) return [];
      const rows = await database.transaction('r', table, () => allOf(tableOf(table)));
      return inSlices(rows, (row) => entryOf(row, table, codec));
    },
    one: async ({ table, id }) => {
      const row = has.has(table) ? await tableOf(table).get(id) : undefined;
      return row && entryOf(row, table, codec);
    },
    write: async function write(changes, isAgain = false): Promise<Written> {
      if (isNewer) throw new StoreError('newer');
      if (isOutdated()) throw new StoreError('outdated');
      if (changes.length === 0) return { ok: true, revs: [] };
      // encoded before and decoded after, since a transaction waits for nothing but the database
      const rows = await inSlices(changes, (change) =>
        change.text === undefined ? undefined : rowOf(change, codec),
      );
      let clashing: { change: Change; row: Found | undefined }[] = [];
      let admitted = true as boolean; // set within the transaction
      try {
        await database.transaction(
          'rw',
          [...new Set([...changes.map(({ table }) => table), ...(guard ? [guard.at.table] : [])])],
          async () => {
            admitted = await isAdmitted();
            if (!admitted) return;
            const asked = changes.filter(({ base }) => base !== ANY);
            for (let at = 0; at < asked.length; at += ROWS_AT_ONCE) {
              const part = asked.slice(at, at + ROWS_AT_ONCE);
              const there = await Promise.all(part.map(({ table, id }) => tableOf(table).get(id)));
              clashing = clashing.concat(
                part
                  .map((change, i) => ({ change, row: there[i] }))
                  .filter(({ change, row }) => revOf(row) !== change.base),
              );
            }
            if (clashing.length > 0) return;
            for (const [i, { table, id }] of changes.entries()) {
              const row = rows[i];
              if (row) await tableOf(table).put(row);
              else await tableOf(table).delete(id);
            }
          },
        );
      } catch (error) {
        throw new StoreError(isOutdated() ? 'outdated' : troubleOf(error), error);
      }
      if (!admitted) {
        // the lock was set or taken away after the rows were made: they are made once more
        if (isAgain) throw new StoreError('failed', new Error('another lock stands'));
        return write(changes, true);
      }
      if (clashing.length === 0) return { ok: true, revs: rows.map((row) => row?.rev) };
      const clashes = clashing.map(async ({ change: { table, id }, row }): Promise<Clash> => ({
        table,
        id,
        entry: row && (await entryOf(row, table, codec)),
      }));
      return { ok: false, clashes: await Promise.all(clashes) };
    },
    watch: (table, changed) => {
      if (has.has(table))
        // one row is asked for, by the order of all: so every row is watched, and not all are read
        liveQuery(() => tableOf(table).orderBy(':id').limit(1).toArray()).subscribe({
          next: () => Dexie.ignoreTransaction(changed),
          error: () => undefined,
        });
    },
    close: () => {
      database.close();
    },
  };
}
