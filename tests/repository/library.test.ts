/** One's own sources and reflexes through the store: kept, switched, undone, read anew, never trusted. */
import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS, ATLAS_PARTS } from '../../src/lib/atlas/atlas.ts';
import type { OwnSource } from '../../src/lib/atlas/own.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { chosenBy } from '../../src/lib/present/sourceChoice.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { isOwn, Library } from '../../src/lib/repository/library.svelte.ts';
import { openDatabase } from '../../src/lib/store/database.ts';
import { memoryRows } from '../../src/lib/store/memory.ts';
import { ANY, type Rows } from '../../src/lib/store/rows.ts';
import { ownRow, readOwnRow } from '../../src/lib/store/own.ts';
import { readCsv, writeCsv } from '../../src/lib/store/table.ts';
import { keptIn } from '../support/rows.ts';

const book: OwnSource = {
  kind: 'source',
  id: 'own-book',
  name: 'Lecture book 2020',
  tier: 'textbook',
  on: true,
  rows: [{ reflex: 'Moro reflex', appears: '28 wk', integrates: '1 mo', note: 'p. 112' }],
};

async function libraryWith(store: Rows = memoryRows()): Promise<Library> {
  const library = new Library(ATLAS_PARTS);
  await library.load(store);
  return library;
}

const sourcesOf = (library: Library): string[] =>
  library.atlas.claims.get('moro')!.map((claim) => claim.source.short);

describe('a source of one’s own', () => {
  test('takes part at once, is switched off and on, removed, and each is undone', async () => {
    const library = await libraryWith();
    await library.put(book);
    expect(sourcesOf(library)).toContain('Lecture book 2020');
    library.toggle(book.id);
    expect(sourcesOf(library)).not.toContain('Lecture book 2020');
    expect(library.known.sources.has(book.id)).toBe(true);
    library.undo();
    expect(sourcesOf(library)).toContain('Lecture book 2020');
    library.remove(book.id);
    expect(library.entries).toEqual([]);
    library.undo();
    expect(library.entries).toEqual([book]);
    library.redo();
    expect(library.entries).toEqual([]);
  });

  test('survives a reload, and is parsed again', async () => {
    const store = memoryRows();
    const first = await libraryWith(store);
    await first.put(book);
    await first.written;
    const second = await libraryWith(store);
    expect(second.entries).toEqual([book]);
    expect(sourcesOf(second)).toContain('Lecture book 2020');
  });

  test('is judged by: alone it has a Moro at 5 months persisting', async () => {
    const library = await libraryWith();
    await library.put(book);
    const chosen = chosenBy({ by: 'one', source: book.id }, library.atlas);
    const sheet = sheetOf(library.atlas, chosen);
    const visits = judgeCase(demoCase(ATLAS), { atlas: library.atlas, sheet });
    const moro = visits.at(-1)!.findings.find(({ reflex }) => reflex.id === 'moro')!;
    expect(moro.judged).toMatchObject({ verdict: 'persisting' });
    library.remove(book.id);
    expect(chosenBy({ by: 'one', source: book.id }, library.atlas)).toBe('default');
  });

  test('opens in a colleague’s hands from its CSV as the same rows', () => {
    const read = readCsv(writeCsv(book.rows));
    expect(read).toEqual({ ok: true, rows: book.rows });
  });

  test('its id is told from every built-in one', () => {
    expect(isOwn(book.id)).toBe(true);
    expect([...ATLAS.sources.keys(), ...ATLAS.reflexes.keys()].some(isOwn)).toBe(false);
  });
});

describe('the store', () => {
  test('a database of version 1 keeps its children and takes what is one’s own', async () => {
    const name = 'tidemark-own-migration';
    const record = demoCase(ATLAS);
    const old = new Dexie(name);
    old.version(1).stores({ cases: 'id' });
    await old.open();
    await old.table('cases').put({ id: 'kestrel', text: caseText(record) });
    old.close();
    const store = await openDatabase({ name });
    expect(await keptIn(store)).toEqual([{ id: 'kestrel', record }]);
    const library = await libraryWith(store);
    await library.put(book);
    await library.written;
    store.close();
    const again = await openDatabase({ name });
    expect((await libraryWith(again)).entries).toEqual([book]);
    again.close();
  });

  test('a row that is broken or of a newer version is left as it is and named', async () => {
    const store = memoryRows();
    const newer = ownRow({ ...book, id: 'own-newer' }).text.replace('"version":1', '"version":2');
    await store.write(
      [
        ownRow(book),
        { id: 'own-torn', text: '{"format":"tidemark-own"' },
        { id: 'own-newer', text: newer },
      ].map((row) => ({ table: 'own' as const, base: ANY, ...row })),
    );
    const library = await libraryWith(store);
    expect(library.entries).toEqual([book]);
    expect(library.damaged).toEqual(['own-torn', 'own-newer']);
    expect(await store.read('own')).toHaveLength(3);
  });

  test('a write that is refused is said, and nothing on the page is lost', async () => {
    const store = {
      ...memoryRows(),
      write: () => Promise.reject(new Error('no room')),
    };
    const library = await libraryWith(store);
    await library.put(book);
    await library.written;
    expect(library.refusedWrite).toBe(true);
    expect(sourcesOf(library)).toContain('Lecture book 2020');
  });

  test('whatever text stands in a row, reading it never throws', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(() => readOwnRow({ id: 'own-x', text })).not.toThrow();
      }),
    );
  });
});
