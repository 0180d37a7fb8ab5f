/**
 * The lock on the store: a content key made of chance, wrapped by one that is stretched from a
 * passphrase. Another passphrase wraps it anew and no row is touched.
 */
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import {
  derivationShape,
  deriveBytes,
  newDerivation,
  passphraseBytes,
  type Derivation,
  type Strength,
} from './derive.ts';
import { importKey, openFresh, sealFresh, utf8, type Bytes } from './seal.ts';

const KEY_BYTES = 32;
const KEY_ID_BYTES = 16;

/** What lies beside sealed rows: how the passphrase is stretched, and the content key in its wrap. */
const lockShape = v.object({
  format: v.literal('tidemark-lock'),
  version: v.literal(1),
  derivation: derivationShape,
  /** Names the content key, the same under every passphrase: no secret. Locks of before have none. */
  keyId: v.optional(v.pipe(v.string(), v.regex(/^[0-9a-f]{32}$/))),
  /** Nonce, sealed key and tag, hexadecimal. */
  wrapped: v.pipe(v.string(), v.regex(/^[0-9a-f]{120}$/)),
});

export type LockRecord = v.InferOutput<typeof lockShape>;

/** A lock from its stored text; undefined when it is none, or of a newer form. */
export function readLock(text: string): LockRecord | undefined {
  try {
    const read = v.safeParse(lockShape, JSON.parse(text));
    return read.success ? read.output : undefined;
  } catch {
    return undefined;
  }
}

/** The parameters are bound into the wrap: who weakens them on the disk only breaks the lock. */
const boundBy = (derivation: Derivation): Bytes =>
  utf8(
    JSON.stringify([
      'lock',
      derivation.algorithm,
      derivation.memoryKiB,
      derivation.passes,
      derivation.lanes,
      derivation.salt,
    ]),
  );

const wrappingKey = async (passphrase: string, derivation: Derivation): Promise<CryptoKey> =>
  importKey(await deriveBytes(passphraseBytes(passphrase), derivation));

async function wrap(
  raw: Bytes,
  passphrase: string,
  keyId: string | undefined,
  strength: Strength | undefined,
): Promise<LockRecord> {
  const derivation = newDerivation(strength);
  const key = await wrappingKey(passphrase, derivation);
  const wrapped = bytesToHex(await sealFresh(key, raw, boundBy(derivation)));
  const named = keyId === undefined ? {} : { keyId };
  return { format: 'tidemark-lock', version: 1, derivation, ...named, wrapped };
}

/** The content key's bytes; undefined where the passphrase is another. */
async function unwrap(lock: LockRecord, passphrase: string): Promise<Bytes | undefined> {
  const key = await wrappingKey(passphrase, lock.derivation);
  try {
    return await openFresh(key, new Uint8Array(hexToBytes(lock.wrapped)), boundBy(lock.derivation));
  } catch {
    return undefined;
  }
}

/** A lock with a content key that never was before; stretched as `STRENGTH` says unless told otherwise. */
export async function newLock(
  passphrase: string,
  strength?: Strength,
): Promise<{ lock: LockRecord; key: CryptoKey }> {
  const raw = crypto.getRandomValues(new Uint8Array(KEY_BYTES));
  const keyId = bytesToHex(crypto.getRandomValues(new Uint8Array(KEY_ID_BYTES)));
  const lock = await wrap(raw, passphrase, keyId, strength);
  return { lock, key: await importKey(raw) };
}

/** The content key; undefined where the passphrase is another. Nothing is changed either way. */
export async function openLock(
  lock: LockRecord,
  passphrase: string,
): Promise<CryptoKey | undefined> {
  const raw = await unwrap(lock, passphrase);
  return raw && importKey(raw);
}

/** The same content key under another passphrase; undefined where the old one is wrong. */
export async function rewrap(
  lock: LockRecord,
  passphrase: string,
  next: string,
  strength?: Strength,
): Promise<LockRecord | undefined> {
  const raw = await unwrap(lock, passphrase);
  return raw && wrap(raw, next, lock.keyId, strength);
}
