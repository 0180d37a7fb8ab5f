/**
 * The browser's database: tables of case files, of what is one's own and of talks, by id. A row is the
 * text of a file, so that what is stored and what is saved pass the same door, and a newer version is
 * recognised.
 */
import Dexie, { liveQuery, type EntityTable } from 'dexie';
import type { Atlas } from '../atlas/atlas.ts';
import { caseText, parseCaseText } from '../case/file.ts';
import type { OwnRow } from './own.ts';
import { VERSIONS } from './versions.ts';
import type { Kept, Store, TalkRow, Unread } from './store.ts';

export const DATABASE = 'tidemark-children';

/** A stored row. `text` is a case file, whatever its version. */
export interface Row {
  id: string;
  text: string;
}

type Database = Dexie & {
  cases: EntityTable<Row, 'id'>;
  own: EntityTable<OwnRow, 'id'>;
  talks: EntityTable<TalkRow, 'id'>;
};

/** Rows of plain text; a row that is not one is read as empty. */
const textRows = (rows: readonly Partial<Row>[]): Row[] =>
  rows.map(({ id, text }) => ({ id: String(id), text: typeof text === 'string' ? text : '' }));

const rowOf = ({ id, record }: Kept): Row => ({ id, text: caseText(record) });

/** Rows that were read or written before, by id: of many children a change concerns one. */
type Known = Map<string, { text: string; kept: Kept }>;

function readRows(
  rows: readonly unknown[],
  atlas: Atlas,
  known: Known,
): { kept: Kept[]; unread: Unread[] } {
  const kept: Kept[] = [];
  const unread: Unread[] = [];
  for (const row of rows as readonly Partial<Row>[]) {
    const id = String(row.id);
    const text = typeof row.text === 'string' ? row.text : '';
    const before = known.get(id);
    if (before?.text === text) {
      kept.push(before.kept);
      continue;
    }
    const parsed = parseCaseText(text, atlas);
    if (parsed.ok) {
      const one = { id, record: parsed.value };
      known.set(id, { text, kept: one });
      kept.push(one);
    } else unread.push({ id, problems: parsed.problems });
  }
  return { kept, unread };
}

/** Opens the database, making it with the seed when it is new. Rejects when storage is denied. */
export async function openDatabase(
  atlas: Atlas,
  seed: readonly Kept[],
  name = DATABASE,
): Promise<Store> {
  const database = new Dexie(name) as Database;
  for (const { version, stores } of VERSIONS) database.version(version).stores(stores);
  database.on('populate', (transaction) => {
    void transaction.table('cases').bulkAdd(seed.map(rowOf));
  });
  await database.open();
  const known: Known = new Map();
  return {
    kind: 'kept',
    all: async () => readRows(await database.cases.toArray(), atlas, known),
    put: async (one) => {
      const row = rowOf(one);
      await database.cases.put(row);
      known.set(one.id, { text: row.text, kept: one });
    },
    remove: async (id) => {
      await database.cases.delete(id);
      known.delete(id);
    },
    watch: (changed) => {
      liveQuery(() => database.cases.toArray()).subscribe({ next: changed });
    },
    own: async () => textRows(await database.own.toArray()),
    putOwn: async (row) => {
      await database.own.put(row);
    },
    removeOwn: (id) => database.own.delete(id),
    watchOwn: (changed) => {
      liveQuery(() => database.own.toArray()).subscribe({ next: changed });
    },
    talks: async () => textRows(await database.talks.toArray()),
    putTalk: async (row) => {
      await database.talks.put(row);
    },
    removeTalk: (id) => database.talks.delete(id),
    watchTalks: (changed) => {
      liveQuery(() => database.talks.toArray()).subscribe({ next: changed });
    },
    close: () => {
      database.close();
    },
  };
}
