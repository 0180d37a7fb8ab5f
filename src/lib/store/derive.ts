/**
 * A key from a passphrase, slowly: Argon2id (RFC 9106), so that each guess costs time and memory. In
 * plain script, since compiled code would need a wider content security policy.
 */
import { argon2idAsync } from '@noble/hashes/argon2.js';
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';

/** How a key was derived: written beside what it opens, so that a later default harms nothing. */
export interface Derivation {
  algorithm: 'argon2id';
  /** Memory, KiB. */
  memoryKiB: number;
  /** Passes over the memory. */
  passes: number;
  /** Parallel lanes. */
  lanes: number;
  /** Hexadecimal. */
  salt: string;
}

/**
 * OWASP Password Storage Cheat Sheet, Argon2id: at least one of "m=47104 (46 MiB), t=1, p=1" and
 * "m=19456 (19 MiB), t=2, p=1" (and three smaller ones said to be equal). Ours is no less than either
 * in both memory and passes; 16 bytes of salt as in RFC 9106, section 4.
 */
export const STRENGTH = { memoryKiB: 47_104, passes: 2, lanes: 1 } as const;
const SALT_BYTES = 16;
const KEY_BYTES = 32;

const whole = (low: number, high: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(low), v.maxValue(high));

/** What is read back is hostile: a lock that asks for gigabytes or hours is none of ours. */
export const derivationShape = v.object({
  algorithm: v.literal('argon2id'),
  memoryKiB: whole(8, 262_144),
  passes: whole(1, 10),
  lanes: whole(1, 4),
  salt: v.pipe(v.string(), v.regex(/^(?:[0-9a-f]{2}){8,64}$/)),
});

/** What stretching costs: memory in KiB, passes over it, lanes. */
export type Strength = Pick<Derivation, 'memoryKiB' | 'passes' | 'lanes'>;

export const newDerivation = (strength: Strength = STRENGTH): Derivation => ({
  algorithm: 'argon2id',
  ...strength,
  salt: bytesToHex(crypto.getRandomValues(new Uint8Array(SALT_BYTES))),
});

/** Further inputs of Argon2, which Tidemark leaves empty and the published vectors use. */
interface Further {
  key?: Uint8Array;
  personalization?: Uint8Array;
}

/** 32 bytes from the bytes of a passphrase. Takes about half a second, in steps that let the page live. */
export const deriveBytes = async (
  passphrase: Uint8Array,
  { memoryKiB, passes, lanes, salt }: Derivation,
  further: Further = {},
): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(
    await argon2idAsync(passphrase, hexToBytes(salt), {
      m: memoryKiB,
      t: passes,
      p: lanes,
      dkLen: KEY_BYTES,
      ...further,
    }),
  );

/**
 * A passphrase as bytes. Composed first (NFC, as RFC 8265 section 4.2 asks of passwords), so that it
 * does not matter how a keyboard makes an accent.
 */
export const passphraseBytes = (passphrase: string): Uint8Array =>
  new TextEncoder().encode(passphrase.normalize('NFC'));
