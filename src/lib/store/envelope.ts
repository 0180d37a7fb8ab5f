/**
 * Files in the open age format, version 1 (age-encryption.org/v1), closed with a passphrase: any program
 * that knows the format opens them. Loaded only when such a file is made or opened.
 */
import { armor, Decrypter, Encrypter } from 'age-encryption';
import { MAX_PASSPHRASE } from './passphrase.ts';

/** Why an encrypted file was not opened. */
export type EnvelopeProblem =
  /** The passphrase is another one, or the head of the file was changed: the two cannot be told apart. */
  | 'wrong-passphrase'
  /** Opened for a person's key and not by a passphrase. */
  | 'by-key'
  /** It asks for more work than an honest file does. */
  | 'too-costly'
  /** Cut short or changed. */
  | 'damaged'
  /** Not such a file. */
  | 'not-encrypted'
  | 'too-large';

export type Opened = { ok: true; text: string } | { ok: false; problem: EnvelopeProblem };

/** As many bytes as a backup may have, and some for the envelope. */
export const MAX_ENVELOPE_BYTES = 60_000_000;
const INTRO = 'age-encryption.org/v1\n';
const ARMOR = '-----BEGIN AGE ENCRYPTED FILE-----';
/** Steps of scrypt as a power of two: OWASP Password Storage Cheat Sheet, "N=2^17 (128 MiB), r=8, p=1". */
const WORK = 17;
/** Other programs write 18 or somewhat more; each step doubles the wait. */
const MAX_WORK = 20;

const startsWith = (bytes: Uint8Array, text: string): boolean =>
  new TextDecoder('latin1').decode(bytes.subarray(0, text.length)) === text;

/** Whether a file begins as an encrypted one does, binary or as lines of letters. */
export const looksEncrypted = (head: Uint8Array): boolean =>
  startsWith(head, INTRO) || startsWith(head, ARMOR);

/** A text as an encrypted file; `work` is the power of two of scrypt's steps. */
export async function closeEnvelope(
  text: string,
  passphrase: string,
  work = WORK,
): Promise<Uint8Array<ArrayBuffer>> {
  const encrypter = new Encrypter();
  encrypter.setPassphrase(passphrase.normalize('NFC'));
  encrypter.setScryptWorkFactor(work);
  return new Uint8Array(await encrypter.encrypt(text));
}

/** How it was closed, from the one stanza that a passphrase allows. */
function headProblem(bytes: Uint8Array): EnvelopeProblem | undefined {
  const head = new TextDecoder('latin1').decode(bytes.slice(INTRO.length, INTRO.length + 200));
  const stanza = /^-> (\S+)(?: \S+(?: (\S+))?)?/.exec(head);
  if (!stanza) return 'damaged';
  const [, kind, work = ''] = stanza;
  if (kind !== 'scrypt') return 'by-key';
  if (!/^[1-9]\d{0,2}$/.test(work)) return 'damaged';
  return Number(work) > MAX_WORK ? 'too-costly' : undefined;
}

function binary(bytes: Uint8Array): Uint8Array | EnvelopeProblem {
  if (bytes.length > MAX_ENVELOPE_BYTES) return 'too-large';
  if (startsWith(bytes, INTRO)) return bytes;
  if (!startsWith(bytes, ARMOR)) return 'not-encrypted';
  try {
    return armor.decode(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return 'damaged';
  }
}

/** The text in an encrypted file. The stretching of the passphrase takes a second or more. */
export async function openEnvelope(file: Uint8Array, passphrase: string): Promise<Opened> {
  const bytes = binary(file);
  if (typeof bytes === 'string') return { ok: false, problem: bytes };
  const head = headProblem(bytes);
  if (head) return { ok: false, problem: head };
  if (passphrase.length > MAX_PASSPHRASE) return { ok: false, problem: 'wrong-passphrase' };
  const decrypter = new Decrypter();
  decrypter.addPassphrase(passphrase.normalize('NFC'));
  try {
    const plain = await decrypter.decrypt(bytes);
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(plain) };
  } catch (error) {
    // the library tells what failed in its sentence alone
    const isKey = error instanceof Error && error.message.startsWith('no identity matched');
    return { ok: false, problem: isKey ? 'wrong-passphrase' : 'damaged' };
  }
}
