/**
 * Stored copies of every version of the database, each written by the Tidemark of its time, opened by
 * this one: every record is found, and a database of a version to come is read and left as it is.
 */
import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { openDatabase } from '../../src/lib/store/database.ts';
import { TABLES, type Rows } from '../../src/lib/store/rows.ts';
import { LATEST, VERSIONS } from '../../src/lib/store/versions.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { latestText, parseCaseText } from '../../src/lib/case/file.ts';
import { withKey } from '../../src/lib/lock/storedLock.ts';
import { newLock } from '../../src/lib/store/lock.ts';
import { LOCK_ROW, LockCodec } from '../../src/lib/store/lockCodec.ts';
import { keptIn } from '../support/rows.ts';

interface Frozen {
  version: number;
  stores: Record<string, { keyPath: string; rows: Record<string, unknown>[] }>;
}

/** A lock that opens at once. */
const LIGHT = { memoryKiB: 64, passes: 1, lanes: 1 };

const FOLDER = join(import.meta.dirname, 'versions');
const frozen = (version: number): Frozen =>
  JSON.parse(readFileSync(join(FOLDER, `${version}.json`), 'utf8')) as Frozen;

const settled = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('refused'));
  });

/** Makes a database as it was, by the browser's own means. */
async function thaw(name: string, { version, stores }: Frozen): Promise<void> {
  const opening = indexedDB.open(name, version);
  opening.onupgradeneeded = () => {
    for (const [store, { keyPath, rows }] of Object.entries(stores)) {
      const made = opening.result.createObjectStore(store, { keyPath });
      for (const row of rows) made.add(row);
    }
  };
  (await settled(opening)).close();
}

/** Every row that is there, by table, by the browser's own means. */
async function lying(
  name: string,
): Promise<{ version: number; stores: Record<string, unknown[]> }> {
  const database = await settled(indexedDB.open(name));
  const stores: Record<string, unknown[]> = {};
  for (const store of database.objectStoreNames)
    stores[store] = await settled(database.transaction(store).objectStore(store).getAll());
  const { version } = database;
  database.close();
  return { version, stores };
}

let round = 0;
let opened: Rows | undefined;
afterEach(() => {
  opened?.close();
  round += 1;
});

test('there is a stored copy of every version', () => {
  const copies = readdirSync(FOLDER).map((file) => Number.parseInt(file, 10));
  expect(copies.sort((a, b) => a - b)).toEqual(VERSIONS.map(({ version }) => version));
});

describe.each(VERSIONS.map(({ version }) => version))('version %i', (version) => {
  test('opens with every record of it, and again', async () => {
    const name = `migration-${round}`;
    const old = frozen(version);
    await thaw(name, old);
    for (const time of ['first', 'second']) {
      opened = await openDatabase({ name, seed: [{ id: 'seed', text: 'only in a new one' }] });
      expect(opened.kind, time).toBe('kept');
      for (const table of TABLES) {
        const rows = old.stores[table]?.rows ?? [];
        const entries = await opened.read(table);
        expect(
          entries.map(({ id, text }) => ({ id, text })),
          table,
        ).toEqual(
          rows.map((row) => {
            const id = String(row['id']);
            const text = String(row['body'] ?? row['text']);
            const isRewritten = table === 'cases' && version < 5;
            return { id, text: (isRewritten ? latestText(text, id) : undefined) ?? text };
          }),
        );
      }
      expect(await keptIn(opened)).toHaveLength(old.stores['cases']!.rows.length);
      opened.close();
    }
    expect((await lying(name)).version).toBe(LATEST * 10);
  });
});

describe('a child whose visits had no ids', () => {
  const old = frozen(4);
  const [{ id, body }] = old.stores['cases']!.rows as [{ id: string; body: string }];
  const derived = parseCaseText(body, ATLAS, id);

  test('has the ids that follow from it, and its row is rewritten with them, once', async () => {
    const name = `migration-${round}`;
    await thaw(name, old);
    const times: unknown[] = [];
    for (const time of ['first', 'second']) {
      opened = await openDatabase({ name });
      const desk = new Desk(ATLAS, [], undefined);
      await desk.load(opened);
      expect(derived.ok && desk.open?.record, time).toEqual(derived.ok && derived.value);
      expect(JSON.parse((await opened.one({ table: 'cases', id }))!.text)).toMatchObject({
        version: 2,
        visits: derived.ok && derived.value.visits.map((visit) => ({ id: visit.id })),
      });
      opened.close();
      times.push((await lying(name)).stores);
    }
    expect(times[1]).toEqual(times[0]);
    const { stores } = await lying(name);
    for (const [store, { rows }] of Object.entries(old.stores))
      if (store !== 'cases') expect(stores[store], store).toEqual(rows);
  });

  test('that cannot be read stays as it is', async () => {
    const name = `migration-${round}`;
    const bodies = ['', '{', '{"format":"tidemark-case","version":1}', '{"version":7}', 7, null];
    const rows = bodies.map((one, at) => ({ id: String(at), rev: 'r', body: one }));
    await thaw(name, { ...old, stores: { ...old.stores, cases: { keyPath: 'id', rows } } });
    opened = await openDatabase({ name });
    opened.close();
    expect((await lying(name)).stores['cases']).toEqual(rows);
  });

  test('has them under a lock too, where its row stays sealed', async () => {
    const name = `migration-${round}`;
    const { lock, key } = await newLock('six words that nobody else has', LIGHT);
    const codec = withKey(new LockCodec(), key, lock);
    const sealed = await codec.encode(body, { table: 'cases', id });
    const cases = { keyPath: 'id', rows: [{ id, rev: 'r', body: sealed }] };
    const small = { keyPath: 'id', rows: [{ ...LOCK_ROW, rev: 'l', body: JSON.stringify(lock) }] };
    await thaw(name, { ...old, stores: { ...old.stores, cases, small } });
    opened = await openDatabase({ name, codec });
    const desk = new Desk(ATLAS, [], undefined);
    await desk.load(opened);
    expect(derived.ok && desk.open?.record).toEqual(derived.ok && derived.value);
    desk.removeVisit(desk.open!.record.visits[0]!.id);
    await desk.written;
    expect(desk.keeping).toBe('kept');
    opened.close();
    const rows = (await lying(name)).stores['cases'] as { body: unknown }[];
    for (const row of rows) expect(row.body).toBeInstanceOf(Uint8Array);
    opened = await openDatabase({ name, codec });
    const { text } = (await opened.one({ table: 'cases', id }))!;
    expect(JSON.parse(text)).toMatchObject({ version: 2 });
  });
});

describe('a database of a version to come', () => {
  const later = frozen(LATEST);
  const coming: Frozen = {
    version: (LATEST + 1) * 10,
    stores: {
      ...later.stores,
      letters: { keyPath: 'id', rows: [{ id: 'x', body: 'unheard of' }] },
    },
  };

  test('is read, is not written, and stays as it is', async () => {
    const name = `migration-${round}`;
    await thaw(name, coming);
    const before = await lying(name);
    opened = await openDatabase({ name });
    expect(opened.kind).toBe('newer');
    expect(await keptIn(opened)).toHaveLength(coming.stores['cases']!.rows.length);
    await expect(
      opened.write([{ table: 'cases', id: 'new', base: undefined, text: 'x' }]),
    ).rejects.toMatchObject({ trouble: 'newer' });
    opened.close();
    expect(await lying(name)).toEqual(before);
  });

  test('is shown on the desk, which takes no change', async () => {
    const name = `migration-${round}`;
    await thaw(name, coming);
    opened = await openDatabase({ name });
    const desk = new Desk(ATLAS, [], undefined);
    await desk.load(opened);
    const shelf = desk.shelf;
    expect(shelf.map(({ id }) => id)).toContain('kestrel');
    const refused = desk.follow({ question: 'new' }, 'question-changed', 'kestrel');
    expect(refused.ok ? [] : refused.problems.map(({ code }) => code)).toEqual(['read-only']);
    desk.removeChild('kestrel');
    expect(desk.shelf).toBe(shelf);
  });

  test('without a table this one knows, it has nothing there', async () => {
    const name = `migration-${round}`;
    const { cases } = coming.stores;
    await thaw(name, { ...coming, stores: { cases: cases! } });
    opened = await openDatabase({ name });
    expect(await opened.read('bin')).toEqual([]);
  });
});
