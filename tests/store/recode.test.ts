import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openDatabase } from '../../src/lib/store/database.ts';
import { newLock, openLock, readLock, type LockRecord } from '../../src/lib/store/lock.ts';
import { LockCodec } from '../../src/lib/store/lockCodec.ts';
import { LockMoved, recode } from '../../src/lib/store/recode.ts';
import { ANY, StoreError, type Rows } from '../../src/lib/store/rows.ts';
import { isSealed } from '../../src/lib/store/seal.ts';

const PASSPHRASE = 'three dunlins on the mud';
/** What is tried is the change of every row, not the stretching. */
const LIGHT = { memoryKiB: 64, passes: 1, lanes: 1 };
const TEXTS = ['Kestrel, 2026-01-04', 'Plover', 'a quiet note'];
const seed = TEXTS.map((text, i) => ({ id: `child-${i}`, text }));
let lock: LockRecord;
let key: CryptoKey;
let round = 0;
const opened: Rows[] = [];

const name = (): string => `tidemark-recode-${round}`;

const coded = (withKey = false, onshut?: () => void): LockCodec => {
  const codec = new LockCodec(onshut);
  if (withKey) Object.assign(codec, { key, keyId: lock.keyId });
  return codec;
};

async function open(codec: LockCodec): Promise<Rows> {
  const rows = await openDatabase({ name: name(), codec, seed });
  opened.push(rows);
  return rows;
}

const textsIn = async (rows: Rows): Promise<string[]> =>
  (await rows.read('cases')).map(({ text }) => text);

/** Every stored body of children as it lies. */
async function bodies(): Promise<unknown[]> {
  const database = await new Dexie(name()).open();
  const rows = (await database.table('cases').toArray()) as { body: unknown }[];
  database.close();
  return rows.map(({ body }) => body);
}

const set = () =>
  recode({
    name: name(),
    from: coded(),
    to: coded(true),
    lock: JSON.stringify(lock),
    was: undefined,
  });

beforeAll(async () => {
  ({ lock, key } = await newLock(PASSPHRASE, LIGHT));
});

afterEach(() => {
  for (const rows of opened.splice(0)) rows.close();
  round += 1;
});

describe('setting and removing a lock', () => {
  it('seals every row, opens each with the passphrase, and brings them back as they were', async () => {
    const plain = await open(coded());
    const before = await plain.read('cases');
    expect(await set()).toEqual({ written: 3, unread: 0 });
    for (const body of await bodies()) {
      expect(isSealed(body)).toBe(true);
      for (const text of TEXTS) expect(Buffer.from(body as Uint8Array).includes(text)).toBe(false);
    }
    const small = await (await open(coded())).read('small');
    const record = readLock(small.find(({ id }) => id === 'lock')?.text ?? '');
    const again = coded();
    again.key = await openLock(record!, PASSPHRASE);
    const rows = await open(again);
    expect(await rows.read('cases')).toEqual(before);

    await recode({
      name: name(),
      from: coded(true),
      to: coded(),
      lock: undefined,
      was: JSON.stringify(lock),
    });
    expect(await bodies()).toEqual(TEXTS);
    expect(await textsIn(await open(coded()))).toEqual(TEXTS);
    expect(await (await open(coded())).read('small')).toEqual([]);
  });

  it('reads sealed and plain rows side by side, as a kill in the middle would leave them', async () => {
    await open(coded());
    await set();
    const database = await new Dexie(name()).open();
    await database.table('cases').put({ id: 'child-1', rev: 'x', body: 'Plover' });
    database.close();
    expect(await textsIn(await open(coded(true)))).toEqual(TEXTS);
    const all = {
      name: name(),
      from: coded(true),
      to: coded(true),
      lock: JSON.stringify(lock),
      was: JSON.stringify(lock),
    };
    expect(await recode({ ...all, onlyPlain: true })).toEqual({ written: 1, unread: 0 });
    expect((await bodies()).every(isSealed)).toBe(true);
    expect(await textsIn(await open(coded(true)))).toEqual(TEXTS);
  });

  it('is whole or not at all, wherever it is broken off', async () => {
    await open(coded());
    const put = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'put')!
      .value as IDBObjectStore['put'];
    for (let reached = 0; reached < 4; reached++) {
      let count = 0;
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given) {
        if (count++ === reached) this.transaction.abort();
        return put.apply(this, given);
      };
      await expect(set(), `broken at write ${reached}`).rejects.toThrow();
      IDBObjectStore.prototype.put = put;
      expect(await bodies()).toEqual(TEXTS);
      expect(await (await open(coded())).read('small')).toEqual([]);
    }
    await set();
    expect((await bodies()).every(isSealed)).toBe(true);
  });

  it('writes nothing where another lock stands than the one that was seen', async () => {
    await open(coded());
    await set();
    const { lock: next } = await newLock(PASSPHRASE, LIGHT);
    const stale = { name: name(), from: coded(true), to: coded(true), was: JSON.stringify(next) };
    await expect(recode({ ...stale, lock: JSON.stringify(next) })).rejects.toThrow(LockMoved);
    await expect(recode({ ...stale, lock: undefined })).rejects.toThrow(LockMoved);
    await expect(set()).rejects.toThrow(LockMoved);
    expect((await bodies()).every(isSealed)).toBe(true);
    expect(await textsIn(await open(coded(true)))).toEqual(TEXTS);
  });

  it('lets no window write plain text among sealed rows, nor under a key that no lock here wraps', async () => {
    const plain = await open(coded());
    await set();
    const change = { table: 'cases', id: 'child-9', base: ANY, text: 'Tern' } as const;
    await expect(plain.write([change])).rejects.toThrow(StoreError);
    const other = coded(true);
    other.keyId = 'f'.repeat(32);
    await expect((await open(other)).write([change])).rejects.toThrow(StoreError);
    const sealing = await open(coded(true));
    await recode({
      name: name(),
      from: coded(true),
      to: coded(),
      lock: undefined,
      was: JSON.stringify(lock),
    });
    await expect(sealing.write([change])).rejects.toThrow(StoreError);
    expect(await bodies()).toEqual(TEXTS);
    expect((await plain.write([change])).ok).toBe(true);
  });

  it('loses nothing that another window writes meanwhile', async () => {
    const other = await open(coded());
    let isWritten = false;
    const slow = coded(true);
    const encode = slow.encode.bind(slow);
    slow.encode = async (text, at) => {
      if (!isWritten) {
        isWritten = true;
        await other.write([{ table: 'cases', id: 'child-0', base: ANY, text: 'Kestrel, changed' }]);
        await other.write([{ table: 'cases', id: 'child-9', base: ANY, text: 'Tern' }]);
      }
      return encode(text, at);
    };
    await recode({
      name: name(),
      from: coded(),
      to: slow,
      lock: JSON.stringify(lock),
      was: undefined,
    });
    expect(await textsIn(await open(coded(true)))).toEqual([
      'Kestrel, changed',
      'Plover',
      'a quiet note',
      'Tern',
    ]);
  });

  it('leaves a row that cannot be read as it is', async () => {
    await open(coded());
    await set();
    const database = await new Dexie(name()).open();
    const row = (await database.table('cases').get('child-0')) as { body: Uint8Array };
    await database.table('cases').put({ ...row, id: 'child-2' }); // put in another's place
    database.close();
    const back = {
      name: name(),
      from: coded(true),
      to: coded(),
      lock: undefined,
      was: JSON.stringify(lock),
    };
    expect(await recode(back)).toEqual({ written: 2, unread: 1 });
    const [first, second, third] = await bodies();
    expect([first, second]).toEqual(TEXTS.slice(0, 2));
    expect(third).toEqual(row.body);
  });
});

describe('a page without the key', () => {
  it('reads nothing, says so once, and from then on writes nothing plain', async () => {
    await open(coded());
    await set();
    let shut = 0;
    const rows = await open(coded(false, () => (shut += 1)));
    expect(await textsIn(rows)).toEqual(['', '', '']);
    expect(shut).toBe(1);
    const change = { table: 'cases', id: 'child-0', base: ANY, text: 'plain' } as const;
    await expect(rows.write([change])).rejects.toThrow();
    expect((await bodies()).every(isSealed)).toBe(true);
  });
});
