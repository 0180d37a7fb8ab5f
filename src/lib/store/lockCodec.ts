/**
 * The codec of a store that may be locked: with a key content is sealed, without one it lies as it is,
 * and either is read whichever way it lies. So a change from one to the other may stop anywhere.
 */
import { PLAIN, type At, type Codec } from './rows.ts';
import { isSealed, openText, sealText } from './seal.ts';

/** The row that holds how the passphrase is stretched and the key in its wrap: never sealed itself. */
export const LOCK_ROW: At = { table: 'small', id: 'lock' };

const isLockRow = ({ table, id }: At): boolean => table === LOCK_ROW.table && id === LOCK_ROW.id;

/** The name of the content key that a lock row wraps: '' where it has none, undefined for no lock. */
function keyIn(body: unknown): string | undefined {
  if (body === undefined) return undefined;
  if (typeof body !== 'string') return '';
  try {
    const { keyId } = JSON.parse(body) as { keyId?: unknown };
    return typeof keyId === 'string' ? keyId : '';
  } catch {
    return '';
  }
}

export class LockCodec implements Codec {
  /** Set once the passphrase was given. */
  key: CryptoKey | undefined;
  /** Names the key, as the lock does. */
  keyId = '';
  /** While the lock changes, what is to be written waits for it. */
  changing: Promise<void> | undefined;
  /** Plain text does not get among sealed rows, nor what a key sealed that no lock here wraps. */
  readonly guard = {
    at: LOCK_ROW,
    admits: (body: unknown): boolean => {
      const there = keyIn(body);
      if (!this.key || there === undefined) return !this.key && there === undefined;
      return there === '' || this.keyId === '' || there === this.keyId;
    },
  };
  /** A key that opens and does not seal: while a lock is being set or taken away. */
  reading: CryptoKey | undefined;
  /** Sealed content was met without a key: nothing is written from here on. */
  #shut = false;
  readonly #onshut: () => void;

  /** @param onshut called when sealed content is met without a key, as when another window set a lock */
  constructor(onshut: () => void = () => undefined) {
    this.#onshut = onshut;
  }

  async encode(text: string, at: At): Promise<unknown> {
    if (isLockRow(at)) return text;
    await this.changing;
    if (this.key) return sealText(this.key, text, at);
    // who has no key must not write plain text among sealed rows
    if (this.#shut) throw new Error('the store is locked');
    return text;
  }

  async decode(body: unknown, at: At): Promise<string> {
    if (!isSealed(body)) return PLAIN.decode(body, at);
    const key = this.key ?? this.reading;
    if (key) return openText(key, body, at);
    if (!this.#shut) {
      this.#shut = true;
      this.#onshut();
    }
    throw new Error('the store is locked');
  }
}
