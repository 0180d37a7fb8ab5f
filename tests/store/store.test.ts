import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { afterEach, describe, expect, it } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { openDatabase, troubleOf, type Opening } from '../../src/lib/store/database.ts';
import { memoryRows } from '../../src/lib/store/memory.ts';
import { ANY, type Change, type Rows } from '../../src/lib/store/rows.ts';
import { openStore } from '../../src/lib/store/store.ts';
import { keptIn, putKept, seedOf } from '../support/rows.ts';

const record = demoCase(ATLAS);
const kestrel = { id: 'kestrel', record };
const seed = seedOf([kestrel]);
const opened: Rows[] = [];
let round = 0;

const open = async (opening: Opening = {}): Promise<Rows> => {
  const rows = await openDatabase({ name: `tidemark-test-${round}`, seed, ...opening });
  opened.push(rows);
  return rows;
};

const change = (id: string, base: Change['base'], text: string | undefined): Change => ({
  table: 'cases',
  id,
  base,
  text,
});

/** Works on the database past the store, as a broken or hostile program would. */
async function plant(...rows: Record<string, unknown>[]): Promise<void> {
  const database = new Dexie(`tidemark-test-${round}`);
  await database.open();
  await database.table('cases').bulkPut(rows);
  database.close();
}

/** Everything in the database as it lies there. */
async function bytes(): Promise<Record<string, Record<string, unknown>[]>> {
  const database = new Dexie(`tidemark-test-${round}`);
  await database.open();
  const all: Record<string, Record<string, unknown>[]> = {};
  for (const table of database.tables)
    all[table.name] = (await table.toArray()) as Record<string, unknown>[];
  database.close();
  return all;
}

afterEach(() => {
  for (const rows of opened.splice(0)) rows.close();
  round += 1;
});

describe('the database', () => {
  it('holds the invented child when it is first made, and only then', async () => {
    const first = await open();
    expect(await keptIn(first)).toEqual([kestrel]);
    await first.write([change('kestrel', ANY, undefined)]);
    first.close();
    expect(await keptIn(await open())).toEqual([]);
  });

  it('gives back after a reload what was put in', async () => {
    const plover = {
      id: 'plover',
      record: { ...record, child: { ...record.child, label: 'Plover', invented: false } },
    };
    const first = await open();
    await putKept(first, plover);
    first.close();
    expect(await keptIn(await open())).toEqual([kestrel, plover]);
  });

  it('writes only over what the writer has seen, all of it or nothing', async () => {
    const rows = await open();
    const [before] = await rows.read('cases');
    const first = await rows.write([change('kestrel', before!.rev, 'one')]);
    expect(first).toEqual({ ok: true, revs: [expect.any(String)] });
    const late = await rows.write([
      change('other', undefined, 'two'),
      change('kestrel', before!.rev, 'three'),
    ]);
    expect(late).toMatchObject({ ok: false, clashes: [{ id: 'kestrel', entry: { text: 'one' } }] });
    expect((await rows.read('cases')).map(({ text }) => text)).toEqual(['one']);
    const gone = await rows.write([change('nobody', 'seen once', 'four')]);
    expect(gone).toEqual({
      ok: false,
      clashes: [{ table: 'cases', id: 'nobody', entry: undefined }],
    });
  });

  it('says the same of a row in memory', async () => {
    const rows = memoryRows(seed);
    const [before] = await rows.read('cases');
    expect(await rows.write([change('kestrel', before!.rev, 'one')])).toMatchObject({ ok: true });
    expect(
      await rows.write([change('a', undefined, 'b'), change('kestrel', before!.rev, 'two')]),
    ).toMatchObject({ ok: false, clashes: [{ id: 'kestrel', entry: { text: 'one' } }] });
    expect((await rows.read('cases')).map(({ text }) => text)).toEqual(['one']);
  });

  it('has every word of every row in the body, as the codec made it, and reads it back', async () => {
    const turned = (text: string): string => text.split('').reverse().join('');
    const codec = {
      encode: (text: string) => Promise.resolve({ turned: turned(text) }),
      decode: (body: unknown) => turned((body as { turned: string }).turned),
    };
    const rows = await open({ codec });
    const tables = ['cases', 'own', 'talks', 'bin', 'clashes', 'small'] as const;
    const written = tables.map((table) => ({ table, id: 'a', base: undefined, text: 'a note' }));
    expect((await rows.write(written)).ok).toBe(true);
    for (const table of tables) {
      const read = (await rows.read(table)).find(({ id }) => id === 'a');
      expect(read?.text).toBe('a note');
    }
    const all = await bytes();
    expect(Object.keys(all).sort()).toEqual([...tables].sort());
    for (const row of Object.values(all).flat()) {
      expect(Object.keys(row).sort()).toEqual(['body', 'changedAt', 'id', 'rev']);
      expect(row['body']).toHaveProperty('turned');
    }
    expect(await keptIn(rows)).toEqual([kestrel]);
  });

  it('leaves a row that its codec cannot read, and reads the rest', async () => {
    const codec = {
      encode: (text: string) => text,
      decode: (body: unknown, { id }: { id: string }) =>
        id === 'bad' ? Promise.reject(new Error('torn')) : (body as string),
    };
    const rows = await open({ codec });
    await rows.write([change('bad', undefined, 'something')]);
    expect((await rows.read('cases')).map(({ id, text }) => [id, text !== ''])).toEqual([
      ['bad', false],
      ['kestrel', true],
    ]);
  });

  it('takes in what an older page that is still open wrote in the older form', async () => {
    const rows = await open();
    await plant({ id: 'kestrel', text: 'older' });
    const [read] = await rows.read('cases');
    expect(read?.text).toBe('older');
    expect((await rows.write([change('kestrel', read!.rev, 'newer')])).ok).toBe(true);
    expect((await rows.read('cases'))[0]?.text).toBe('newer');
  });

  it.each([
    ['text that is no JSON', { id: 'bad', rev: 'r', body: '<script>' }, 'not-json'],
    ['a row without a body', { id: 'bad' }, 'blank'],
    ['a body that is a number', { id: 'bad', rev: 'r', body: 7 }, 'blank'],
    ['another program’s data', { id: 'bad', rev: 'r', body: '{"format":"other"}' }, 'not-ours'],
    [
      'a newer version',
      { id: 'bad', rev: 'r', body: '{"format":"tidemark-case","version":99}' },
      'newer-version',
    ],
    [
      'a visit before birth',
      { id: 'bad', rev: 'r', body: caseText(record).replace('"2026-01-12"', '"2020-01-12"') },
      'exam-before-birth',
    ],
    [
      'script in a label',
      { id: 'bad', rev: 'r', body: caseText(record).replace('Kestrel', '<script>x</script>') },
      'markup',
    ],
  ])('leaves %s as it is, unread, and reads the rest', async (_, row, code) => {
    const rows = await open();
    await plant(row);
    const desk = new Desk(ATLAS, [], undefined);
    await desk.load(rows);
    expect(desk.shelf).toEqual([kestrel]);
    expect(desk.unread.map(({ id }) => id)).toEqual(['bad']);
    expect(desk.unread[0]?.problems.map((problem) => problem.code)).toContain(code);
    desk.removeChild('kestrel');
    await desk.written;
    expect((await bytes())['cases']).toEqual([row]);
  });

  it('tells another page that shares it of a change', async () => {
    const [here, there] = [await open(), await open()];
    const told = new Promise<number>((resolve) => {
      there.watch('cases', () => {
        void keptIn(there).then((kept) => {
          if (kept.length === 2) resolve(kept.length);
        });
      });
    });
    await putKept(here, { id: 'plover', record });
    expect(await told).toBe(2);
  });

  it('reads again only the children that have changed', async () => {
    const rows = await open();
    const desk = new Desk(ATLAS, [], undefined);
    await desk.load(rows);
    const first = desk.shelf[0]!.record;
    await putKept(rows, { id: 'tern', record: { ...record, visits: [] } });
    await expect.poll(() => desk.shelf.length).toBe(2);
    expect(desk.shelf[0]!.record).toBe(first);
  });
});

describe('without a database', () => {
  it('keeps in memory instead when storage is denied', async () => {
    const denied = globalThis.indexedDB;
    Dexie.dependencies.indexedDB = undefined as never;
    try {
      const rows = await openStore({ seed, name: 'tidemark-denied' });
      expect(rows.kind).toBe('memory');
      expect(await keptIn(rows)).toEqual([kestrel]);
    } finally {
      Dexie.dependencies.indexedDB = denied;
    }
  });
});

describe('why a write was refused', () => {
  it.each([
    ['full', new DOMException('', 'QuotaExceededError')],
    ['full', Object.assign(new Error(''), { inner: new DOMException('', 'QuotaExceededError') })],
    ['denied', new DOMException('', 'SecurityError')],
    ['failed', new DOMException('', 'DataError')],
    ['failed', undefined],
  ])('%s', (trouble, error) => {
    expect(troubleOf(error)).toBe(trouble);
  });
});
