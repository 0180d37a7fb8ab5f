/**
 * Content sealed for this machine: AES-GCM with a key of 256 bits (NIST SP 800-38D) by the browser's own
 * cryptography. The content key is chance; a passphrase only wraps it, so that another passphrase
 * wraps it anew and no row is touched. Every sealed text is bound to its table and id, so that one row
 * cannot be put in another's place.
 */
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import {
  derivationShape,
  deriveBytes,
  newDerivation,
  passphraseBytes,
  type Derivation,
} from './derive.ts';

type Bytes = Uint8Array<ArrayBuffer>;

/** 96 bits, fresh chance each time: with one key good for 2^32 texts (SP 800-38D, section 8.3). */
const NONCE_BYTES = 12;
const KEY_BYTES = 32;

const utf8 = (text: string): Bytes => new TextEncoder().encode(text);

/** Whether the browser offers cryptography here: on secure pages and files, not over plain http. */
export const canSeal = (): boolean =>
  typeof (globalThis.crypto as Crypto | undefined)?.subtle === 'object';

/** A key that can seal and open, and cannot be read out again. */
export const importKey = (raw: Bytes): Promise<CryptoKey> =>
  crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['encrypt', 'decrypt']);

/** Sealed bytes with the tag of 128 bits at their end. A nonce must never come twice with one key. */
export const sealBytes = async (
  key: CryptoKey,
  nonce: Bytes,
  plain: Bytes,
  bound: Bytes,
): Promise<Bytes> =>
  new Uint8Array(
    await crypto.subtle.encrypt({ name: 'AES-GCM', iv: nonce, additionalData: bound }, key, plain),
  );

/** Rejects where one bit of the sealed bytes, the nonce or what they are bound to is another. */
export const openBytes = async (
  key: CryptoKey,
  nonce: Bytes,
  sealed: Bytes,
  bound: Bytes,
): Promise<Bytes> =>
  new Uint8Array(
    await crypto.subtle.decrypt({ name: 'AES-GCM', iv: nonce, additionalData: bound }, key, sealed),
  );

/** The first bytes of a sealed body: what it is, and the version of its form. */
const HEAD = utf8('tidemark sealed 1\n');

/** Where a text lies. */
export interface Place {
  table: string;
  id: string;
}

const boundTo = ({ table, id }: Place): Bytes => utf8(JSON.stringify(['row', table, id]));

/** Whether a stored body was sealed; anything else was not. */
export const isSealed = (body: unknown): body is Bytes =>
  body instanceof Uint8Array && HEAD.every((byte, i) => body[i] === byte);

async function withFreshNonce(key: CryptoKey, plain: Bytes, bound: Bytes): Promise<Bytes> {
  const nonce = crypto.getRandomValues(new Uint8Array(NONCE_BYTES));
  const sealed = await sealBytes(key, nonce, plain, bound);
  const both = new Uint8Array(nonce.length + sealed.length);
  both.set(nonce);
  both.set(sealed, nonce.length);
  return both;
}

const openAfterNonce = (key: CryptoKey, both: Bytes, bound: Bytes): Promise<Bytes> =>
  openBytes(key, both.slice(0, NONCE_BYTES), both.slice(NONCE_BYTES), bound);

export async function sealText(key: CryptoKey, text: string, place: Place): Promise<Bytes> {
  const sealed = await withFreshNonce(key, utf8(text), boundTo(place));
  const body = new Uint8Array(HEAD.length + sealed.length);
  body.set(HEAD);
  body.set(sealed, HEAD.length);
  return body;
}

/** The text of a sealed body; rejects where it was changed, or sealed for another place or key. */
export async function openText(key: CryptoKey, body: Bytes, place: Place): Promise<string> {
  if (!isSealed(body)) throw new Error('not sealed');
  const plain = await openAfterNonce(key, body.slice(HEAD.length), boundTo(place));
  return new TextDecoder('utf-8', { fatal: true }).decode(plain);
}

/** What lies beside sealed rows: how the passphrase is stretched, and the content key in its wrap. */
const lockShape = v.object({
  format: v.literal('tidemark-lock'),
  version: v.literal(1),
  derivation: derivationShape,
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

async function wrap(raw: Bytes, passphrase: string): Promise<LockRecord> {
  const derivation = newDerivation();
  const key = await wrappingKey(passphrase, derivation);
  const wrapped = bytesToHex(await withFreshNonce(key, raw, boundBy(derivation)));
  return { format: 'tidemark-lock', version: 1, derivation, wrapped };
}

/** The content key's bytes; undefined where the passphrase is another. */
async function unwrap(lock: LockRecord, passphrase: string): Promise<Bytes | undefined> {
  const key = await wrappingKey(passphrase, lock.derivation);
  try {
    return await openAfterNonce(
      key,
      new Uint8Array(hexToBytes(lock.wrapped)),
      boundBy(lock.derivation),
    );
  } catch {
    return undefined;
  }
}

/** A lock with a content key that never was before. */
export async function newLock(passphrase: string): Promise<{ lock: LockRecord; key: CryptoKey }> {
  const raw = crypto.getRandomValues(new Uint8Array(KEY_BYTES));
  const lock = await wrap(raw, passphrase);
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
): Promise<LockRecord | undefined> {
  const raw = await unwrap(lock, passphrase);
  return raw && wrap(raw, next);
}

/** How short a passphrase may be, characters. NIST SP 800-63B-4, section 3.1.1.2, from memory. */
export const MIN_PASSPHRASE = 15;
/** More than anybody types. */
export const MAX_PASSPHRASE = 1000;

/** What is wrong with a passphrase to be set, as a code. */
export const passphraseFault = (passphrase: string): 'short' | 'long' | undefined => {
  const { length } = Array.from(passphrase.normalize('NFC'));
  return length < MIN_PASSPHRASE ? 'short' : length > MAX_PASSPHRASE ? 'long' : undefined;
};
