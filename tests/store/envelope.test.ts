import { beforeAll, describe, expect, it } from 'vitest';
import { closeEnvelope, looksEncrypted, openEnvelope } from '../../src/lib/store/envelope.ts';

const PASSPHRASE = 'three dunlins on the mud';
const utf8 = (text: string) => new TextEncoder().encode(text);
/** 2^10 steps of scrypt: what is tried is the file, not the stretching. */
const WORK = 10;
let file: Uint8Array;

beforeAll(async () => {
  file = await closeEnvelope('Kestrel, 2026-01-04', PASSPHRASE, WORK);
});

describe('an encrypted file', () => {
  it('opens with its passphrase, and tells a wrong one', async () => {
    expect(await openEnvelope(file, PASSPHRASE)).toEqual({ ok: true, text: 'Kestrel, 2026-01-04' });
    expect(await openEnvelope(file, 'two dunlins on the mud')).toEqual({
      ok: false,
      problem: 'wrong-passphrase',
    });
  });

  it('holds nothing of what it says', () => {
    for (const part of ['Kestrel', '2026'])
      expect(Buffer.from(file).includes(part), part).toBe(false);
  });

  it('is called damaged where it ends early or was changed', async () => {
    const changed = file.slice();
    changed[changed.length - 1]! ^= 1;
    for (const spoilt of [changed, file.slice(0, -1), file.slice(0, 60)])
      expect(await openEnvelope(spoilt, PASSPHRASE)).toEqual({ ok: false, problem: 'damaged' });
  });

  it('is refused with its reason before the passphrase is tried', async () => {
    const costly = Buffer.from(
      Buffer.from(file).toString('latin1').replace(` ${WORK}\n`, ' 30\n'),
      'latin1',
    );
    const byKey = utf8('age-encryption.org/v1\n-> X25519 abc\nabc\n--- abc\n');
    expect(await openEnvelope(costly, PASSPHRASE)).toEqual({ ok: false, problem: 'too-costly' });
    expect(await openEnvelope(byKey, PASSPHRASE)).toEqual({ ok: false, problem: 'by-key' });
    expect(await openEnvelope(utf8('{}'), '')).toEqual({ ok: false, problem: 'not-encrypted' });
    expect(await openEnvelope(new Uint8Array(60_000_001), '')).toEqual({
      ok: false,
      problem: 'too-large',
    });
  });

  it('is told from others by its first bytes', () => {
    expect(looksEncrypted(file.slice(0, 40))).toBe(true);
    expect(looksEncrypted(utf8('-----BEGIN AGE ENCRYPTED FILE-----\n'))).toBe(true);
    for (const other of ['', 'age', '{"format":"tidemark-case"}'])
      expect(looksEncrypted(utf8(other))).toBe(false);
  });
});
