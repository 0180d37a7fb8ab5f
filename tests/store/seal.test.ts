import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { newLock, openLock, readLock, rewrap, type LockRecord } from '../../src/lib/store/lock.ts';
import { passphraseFault } from '../../src/lib/store/passphrase.ts';
import { importKey, isSealed, openText, sealText } from '../../src/lib/store/seal.ts';
import { runs } from '../support/runs.ts';

const PASSPHRASE = 'three dunlins on the mud';
const place = { table: 'cases', id: 'kestrel' };
/** What is tried is the lock, not the stretching, whose cost is that of `STRENGTH` in one test only. */
const LIGHT = { memoryKiB: 64, passes: 1, lanes: 1 };
let lock: LockRecord;
let key: CryptoKey;

beforeAll(async () => {
  ({ lock, key } = await newLock(PASSPHRASE, LIGHT));
});

describe('a sealed text', () => {
  it('opens again, whatever it says and wherever it lies', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string({ unit: 'grapheme', maxLength: 300 }),
        fc.string(),
        async (text, id) => {
          const body = await sealText(key, text, { table: 'cases', id });
          expect(isSealed(body)).toBe(true);
          expect(await openText(key, body, { table: 'cases', id })).toBe(text);
        },
      ),
      { seed: 1, numRuns: runs(200) },
    );
  });

  it('is another each time, and nowhere holds what it says', async () => {
    const text = 'Kestrel, born 2026-01-04, a quiet child';
    const bodies = await Promise.all(Array.from({ length: 50 }, () => sealText(key, text, place)));
    const nonces = new Set(bodies.map((body) => body.slice(18, 30).toString()));
    expect(nonces.size).toBe(50);
    for (const body of bodies)
      for (const part of ['Kestrel', '2026-01-04', 'quiet'])
        expect(Buffer.from(body).includes(part)).toBe(false);
  });

  it.each([
    ['another id', { table: 'cases', id: 'plover' }],
    ['another table', { table: 'talks', id: 'kestrel' }],
    // joined without a border these two places would be one
    ['a place that only reads alike', { table: 'case', id: 'skestrel' }],
  ])('does not open in %s', async (_, other) => {
    const body = await sealText(key, 'text', place);
    await expect(openText(key, body, other)).rejects.toThrow();
  });

  it('does not open with another key, cut short, lengthened, or with one bit turned', async () => {
    const body = await sealText(key, 'a note', place);
    const other = await importKey(crypto.getRandomValues(new Uint8Array(32)));
    await expect(openText(other, body, place)).rejects.toThrow();
    for (let length = 0; length < body.length; length++)
      await expect(openText(key, body.slice(0, length), place)).rejects.toThrow();
    await expect(openText(key, new Uint8Array([...body, 0]), place)).rejects.toThrow();
    for (let bit = 0; bit < body.length * 8; bit++) {
      const turned = body.slice();
      turned[bit >> 3]! ^= 1 << (bit & 7);
      await expect(openText(key, turned, place)).rejects.toThrow();
    }
  });
});

describe('a lock', () => {
  it('opens with its passphrase, however the accents are made, and with no other', async () => {
    const { lock: accented } = await newLock('caf\u00e9 au bord du lac', LIGHT);
    expect(await openLock(accented, 'cafe\u0301 au bord du lac')).toBeDefined();
    expect(await openLock(accented, 'cafe au bord du lac')).toBeUndefined();
    expect(await openLock(lock, `${PASSPHRASE} `)).toBeUndefined();
    expect(await openLock(lock, '')).toBeUndefined();
  });

  it('gives the same content key under a new passphrase, and no longer under the old', async () => {
    const body = await sealText(key, 'kept', place);
    expect(
      await rewrap(lock, 'a wrong passphrase', 'four dunlins on the mud', LIGHT),
    ).toBeUndefined();
    const next = await rewrap(lock, PASSPHRASE, 'four dunlins on the mud', LIGHT);
    expect(next?.derivation.salt).not.toBe(lock.derivation.salt);
    expect(await openLock(next!, PASSPHRASE)).toBeUndefined();
    const again = await openLock(next!, 'four dunlins on the mud');
    expect(await openText(again!, body, place)).toBe('kept');
  });

  it('holds how it was derived, and breaks where that is weakened', async () => {
    const { lock: usual } = await newLock(PASSPHRASE);
    expect(usual.derivation).toMatchObject({ algorithm: 'argon2id', memoryKiB: 47104, passes: 2 });
    const next = await rewrap(lock, PASSPHRASE, 'four dunlins on the mud');
    expect(next?.derivation).toMatchObject({ memoryKiB: 47104, passes: 2 });
    expect(await openLock(usual, PASSPHRASE)).toBeDefined();
    const weak = { ...usual, derivation: { ...usual.derivation, memoryKiB: 8, passes: 1 } };
    expect(await openLock(weak, PASSPHRASE)).toBeUndefined();
  });

  it('has a key that cannot be read out', async () => {
    const opened = await openLock(lock, PASSPHRASE);
    expect(opened?.extractable).toBe(false);
    await expect(crypto.subtle.exportKey('raw', opened!)).rejects.toThrow();
  });

  it('comes back from its text', () => {
    expect(readLock(JSON.stringify(lock))).toEqual(lock);
  });

  it.each([
    ['no JSON', 'lock'],
    ['another version', () => ({ ...lock, version: 2 })],
    [
      'gigabytes of memory',
      () => ({ ...lock, derivation: { ...lock.derivation, memoryKiB: 2e7 } }),
    ],
    ['hours of work', () => ({ ...lock, derivation: { ...lock.derivation, passes: 1e9 } })],
    ['no salt', () => ({ ...lock, derivation: { ...lock.derivation, salt: '' } })],
    ['a wrap cut short', () => ({ ...lock, wrapped: lock.wrapped.slice(2) })],
  ])('is none with %s', (_, spoilt) => {
    expect(
      readLock(typeof spoilt === 'string' ? spoilt : JSON.stringify(spoilt())),
    ).toBeUndefined();
  });

  it('asks for a passphrase of fifteen characters, counted as a reader counts them', () => {
    expect(passphraseFault('fourteen chars')).toBe('short');
    expect(passphraseFault('fifteen letters')).toBeUndefined();
    expect(passphraseFault('é'.repeat(14).normalize('NFD'))).toBe('short');
    expect(passphraseFault('x'.repeat(1001))).toBe('long');
    expect(passphraseFault('a'.repeat(15))).toBe('same');
    expect(passphraseFault('abcdabcdabcdabcd')).toBe('same');
    expect(passphraseFault('abcdeabcdeabcde')).toBeUndefined();
  });
});
