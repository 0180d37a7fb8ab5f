/** The primitives under the lock against published vectors and a library of another make. */
import fc from 'fast-check';
import { argon2id } from 'hash-wasm';
import { describe, expect, it } from 'vitest';
import { deriveBytes, passphraseBytes, STRENGTH } from '../../src/lib/store/derive.ts';
import { importKey, openBytes, sealBytes } from '../../src/lib/store/seal.ts';
import { runs } from '../support/runs.ts';

const bytes = (hex: string) => new Uint8Array(Buffer.from(hex, 'hex'));
const hex = (data: Uint8Array): string => Buffer.from(data).toString('hex');
const filled = (length: number, value: number) => new Uint8Array(length).fill(value);

describe('Argon2id', () => {
  it('gives the tag of RFC 9106, section 5.3', async () => {
    const tag = await deriveBytes(
      filled(32, 1),
      { algorithm: 'argon2id', memoryKiB: 32, passes: 3, lanes: 4, salt: '02'.repeat(16) },
      { key: filled(8, 3), personalization: filled(12, 4) },
    );
    expect(hex(tag)).toBe('0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659');
  });

  it('agrees with another implementation (hash-wasm) for any passphrase and salt', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }),
        fc.uint8Array({ minLength: 8, maxLength: 32 }),
        async (passphrase, salt) => {
          const how = { memoryKiB: 256, passes: 2, lanes: 1 };
          const ours = await deriveBytes(passphraseBytes(passphrase), {
            algorithm: 'argon2id',
            ...how,
            salt: hex(salt),
          });
          const theirs = await argon2id({
            password: passphrase.normalize('NFC'),
            salt,
            memorySize: how.memoryKiB,
            iterations: how.passes,
            parallelism: how.lanes,
            hashLength: 32,
            outputType: 'hex',
          });
          expect(hex(ours)).toBe(theirs);
        },
      ),
      { seed: 7, numRuns: runs(60, 12) },
    );
  });

  it('agrees with it at the strength that is used', async () => {
    const salt = filled(16, 9);
    const ours = await deriveBytes(passphraseBytes('plover kestrel dunlin'), {
      algorithm: 'argon2id',
      ...STRENGTH,
      salt: hex(salt),
    });
    const theirs = await argon2id({
      password: 'plover kestrel dunlin',
      salt,
      memorySize: STRENGTH.memoryKiB,
      iterations: STRENGTH.passes,
      parallelism: STRENGTH.lanes,
      hashLength: 32,
      outputType: 'hex',
    });
    expect(hex(ours)).toBe(theirs);
  });

  // OWASP Password Storage Cheat Sheet, Argon2id: each of these "a base minimum"
  it.each([
    { memoryKiB: 47_104, passes: 1, lanes: 1 },
    { memoryKiB: 19_456, passes: 2, lanes: 1 },
  ])('is as strong as $memoryKiB KiB with $passes passes', ({ memoryKiB, passes, lanes }) => {
    expect(STRENGTH.memoryKiB).toBeGreaterThanOrEqual(memoryKiB);
    expect(STRENGTH.passes).toBeGreaterThanOrEqual(passes);
    expect(STRENGTH.lanes).toBeGreaterThanOrEqual(lanes);
  });
});

/** McGrew and Viega, "The Galois/Counter Mode of Operation (GCM)", appendix B: the cases of AES-256 with 96-bit IV. */
const KEY = 'feffe9928665731c6d6a8f9467308308feffe9928665731c6d6a8f9467308308';
const IV = 'cafebabefacedbaddecaf888';
const PLAIN =
  'd9313225f88406e5a55909c5aff5269a86a7a9531534f7da2e4c303d8a318a72' +
  '1c3c0c95956809532fcf0e2449a6b525b16aedf5aa0de657ba637b391aafd255';
const SEALED =
  '522dc1f099567d07f47f37a32a84427d643a8cdcbfe5c0c97598a2bd2555d1aa' +
  '8cb08e48590dbb3da7b08b1056828838c5f61e6393ba7a0abcc9f662898015ad';

const GCM = [
  ['13', '00'.repeat(32), '00'.repeat(12), '', '', '', '530f8afbc74536b9a963b4f1c4cb738b'],
  [
    '14',
    '00'.repeat(32),
    '00'.repeat(12),
    '00'.repeat(16),
    '',
    'cea7403d4d606b6e074ec5d3baf39d18',
    'd0d1c8a799996bf0265b98b5d48ab919',
  ],
  ['15', KEY, IV, PLAIN, '', SEALED, 'b094dac5d93471bdec1a502270e3cc6c'],
  [
    '16',
    KEY,
    IV,
    PLAIN.slice(0, 120),
    'feedfacedeadbeeffeedfacedeadbeefabaddad2',
    SEALED.slice(0, 120),
    '76fc6ece0f4e1768cddf8853bb2d551b',
  ],
] as const;

describe('AES-GCM with 256 bits', () => {
  it.each(GCM)('seals and opens test case %s', async (_, key, iv, plain, bound, sealed, tag) => {
    const imported = await importKey(bytes(key));
    const out = await sealBytes(imported, bytes(iv), bytes(plain), bytes(bound));
    expect(hex(out)).toBe(sealed + tag);
    expect(hex(await openBytes(imported, bytes(iv), out, bytes(bound)))).toBe(plain);
  });

  it.each(GCM)('refuses test case %s with any one bit turned', async (_, key, iv, ...rest) => {
    const [, bound, sealed, tag] = rest;
    const imported = await importKey(bytes(key));
    const whole = bytes(sealed + tag);
    for (let bit = 0; bit < whole.length * 8; bit += 5) {
      const turned = whole.slice();
      turned[bit >> 3]! ^= 1 << (bit & 7);
      await expect(openBytes(imported, bytes(iv), turned, bytes(bound))).rejects.toThrow();
    }
  });
});
