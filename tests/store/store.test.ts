import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { afterEach, describe, expect, it } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { caseText } from '../../src/lib/case/file.ts';
import { demoCase } from '../../src/lib/state/demo.ts';
import { openDatabase } from '../../src/lib/store/database.ts';
import { memoryStore } from '../../src/lib/store/memory.ts';
import { openStore, type Store } from '../../src/lib/store/store.ts';

const record = demoCase(ATLAS);
const seed = [{ id: 'kestrel', record }];
const opened: Store[] = [];
let round = 0;

const open = async (name = `tidemark-test-${round}`): Promise<Store> => {
  const store = await openDatabase(ATLAS, seed, name);
  opened.push(store);
  return store;
};

/** Writes a row past the parser, as a broken or hostile program would. */
async function plant(name: string, row: Record<string, unknown>): Promise<void> {
  const database = new Dexie(name);
  await database.open();
  await database.table('cases').put(row);
  database.close();
}

afterEach(() => {
  for (const store of opened.splice(0)) store.close();
  round += 1;
});

describe('the database', () => {
  it('holds the invented child when it is first made, and only then', async () => {
    const first = await open();
    expect((await first.all()).kept).toEqual(seed);
    await first.remove('kestrel');
    first.close();
    const second = await open();
    expect((await second.all()).kept).toEqual([]);
  });

  it('gives back after a reload what was put in', async () => {
    const renamed = { ...record, child: { ...record.child, label: 'Plover', invented: false } };
    const first = await open();
    await first.put({ id: 'plover', record: renamed });
    first.close();
    const { kept } = await (await open()).all();
    expect(kept.find(({ id }) => id === 'plover')?.record).toEqual(renamed);
    expect(kept).toHaveLength(2);
  });

  it('reads only the rows that have changed, and those of another page too', async () => {
    const name = `tidemark-test-${round}`;
    const store = await open(name);
    const [first] = (await store.all()).kept;
    expect((await store.all()).kept[0]).toBe(first);
    const tern = { id: 'tern', record: { ...record, visits: [] } };
    await store.put(tern);
    expect((await store.all()).kept.find(({ id }) => id === 'tern')).toBe(tern);
    const changed = { ...record, visits: record.visits.slice(0, 2) };
    await plant(name, { id: 'tern', text: caseText(changed) });
    const read = (await store.all()).kept;
    expect(read.find(({ id }) => id === 'tern')?.record).toEqual(changed);
    expect(read.find(({ id }) => id === 'kestrel')).toBe(first);
    await plant(name, { id: 'kestrel', text: '<script>' });
    const { kept, unread } = await store.all();
    expect(kept.map(({ id }) => id)).toEqual(['tern']);
    expect(unread.map(({ id }) => id)).toEqual(['kestrel']);
  });

  it('replaces a record of the same name', async () => {
    const store = await open();
    const changed = { ...record, visits: record.visits.slice(0, 1) };
    await store.put({ id: 'kestrel', record: changed });
    expect((await store.all()).kept).toEqual([{ id: 'kestrel', record: changed }]);
  });

  it.each([
    ['text that is no JSON', { id: 'bad', text: '<script>' }, 'not-json'],
    ['a row without text', { id: 'bad' }, 'not-json'],
    ['text that is a number', { id: 'bad', text: 7 }, 'not-json'],
    ['another program’s data', { id: 'bad', text: '{"format":"other"}' }, 'not-ours'],
    [
      'a newer version',
      { id: 'bad', text: '{"format":"tidemark-case","version":99}' },
      'newer-version',
    ],
    [
      'a visit before birth',
      { id: 'bad', text: caseText(record).replace('"2026-01-12"', '"2020-01-12"') },
      'exam-before-birth',
    ],
    [
      'script in a label',
      { id: 'bad', text: caseText(record).replace('Kestrel', '<script>alert(1)</script>') },
      'markup',
    ],
  ])('leaves %s as it is, unread, and reads the rest', async (_, row, code) => {
    const name = `tidemark-test-${round}`;
    (await open(name)).close();
    await plant(name, row);
    const { kept, unread } = await (await open(name)).all();
    expect(kept).toEqual(seed);
    expect(unread.map(({ id }) => id)).toEqual(['bad']);
    expect(unread[0]?.problems.map((problem) => problem.code)).toContain(code);
  });

  it('tells another page that shares it of a change', async () => {
    const name = `tidemark-test-${round}`;
    const [here, there] = [await open(name), await open(name)];
    const told = new Promise<number>((resolve) => {
      there.watch(() => {
        void there.all().then(({ kept }) => {
          if (kept.length === 2) resolve(kept.length);
        });
      });
    });
    await here.put({ id: 'plover', record });
    expect(await told).toBe(2);
  });
});

describe('without a database', () => {
  it('keeps in memory instead when storage is denied', async () => {
    const denied = globalThis.indexedDB;
    Dexie.dependencies.indexedDB = undefined as never;
    try {
      const store = await openStore({ atlas: ATLAS, seed, name: 'tidemark-denied' });
      expect(store.kind).toBe('memory');
      expect((await store.all()).kept).toEqual(seed);
    } finally {
      Dexie.dependencies.indexedDB = denied;
    }
  });

  it('adds, replaces and removes in memory', async () => {
    const store = memoryStore(seed);
    await store.put({ id: 'plover', record });
    await store.remove('kestrel');
    expect((await store.all()).kept).toEqual([{ id: 'plover', record }]);
  });
});
