/**
 * Content sealed for this machine: AES-GCM with a key of 256 bits (NIST SP 800-38D) by the browser's own
 * cryptography. Every sealed text is bound to its table and id, so that one row cannot be put in
 * another's place.
 */
export type Bytes = Uint8Array<ArrayBuffer>;

/** 96 bits, fresh chance each time: with one key good for 2^32 texts (SP 800-38D, section 8.3). */
const NONCE_BYTES = 12;

export const utf8 = (text: string): Bytes => new TextEncoder().encode(text);

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

/** A fresh nonce, then the sealed bytes. */
export async function sealFresh(key: CryptoKey, plain: Bytes, bound: Bytes): Promise<Bytes> {
  const nonce = crypto.getRandomValues(new Uint8Array(NONCE_BYTES));
  const sealed = await sealBytes(key, nonce, plain, bound);
  const both = new Uint8Array(nonce.length + sealed.length);
  both.set(nonce);
  both.set(sealed, nonce.length);
  return both;
}

export const openFresh = (key: CryptoKey, both: Bytes, bound: Bytes): Promise<Bytes> =>
  openBytes(key, both.slice(0, NONCE_BYTES), both.slice(NONCE_BYTES), bound);

export async function sealText(key: CryptoKey, text: string, place: Place): Promise<Bytes> {
  const sealed = await sealFresh(key, utf8(text), boundTo(place));
  const body = new Uint8Array(HEAD.length + sealed.length);
  body.set(HEAD);
  body.set(sealed, HEAD.length);
  return body;
}

/** The text of a sealed body; rejects where it was changed, or sealed for another place or key. */
export async function openText(key: CryptoKey, body: Bytes, place: Place): Promise<string> {
  if (!isSealed(body)) throw new Error('not sealed');
  const plain = await openFresh(key, body.slice(HEAD.length), boundTo(place));
  return new TextDecoder('utf-8', { fatal: true }).decode(plain);
}
