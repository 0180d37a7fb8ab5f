/** What the lock needs of the store: its parts, fetched only then, and what lies there at this moment. */
import type { LockRecord } from '../store/lock.ts';
import { LOCK_ROW, type LockCodec } from '../store/lockCodec.ts';
import type { Rows } from '../store/rows.ts';

export const lockModules = () =>
  Promise.all([import('../store/lock.ts'), import('../store/recode.ts')]);

/** A codec that seals with the key that a lock wraps. */
export const withKey = (codec: LockCodec, key: CryptoKey, { keyId = '' }: LockRecord): LockCodec =>
  Object.assign(codec, { key, keyId });

/** The lock as it lies in the store now, whatever another window did to it; undefined for none. */
export async function lockIn(
  rows: Pick<Rows, 'one'> | undefined,
): Promise<{ record: LockRecord; text: string } | undefined> {
  const row = await rows?.one(LOCK_ROW);
  const { readLock } = await import('../store/lock.ts');
  const record = row && readLock(row.text);
  return record && { record, text: row.text };
}

/** Nothing is written by a codec while the lock is set or taken away. */
export async function holding(
  codec: LockCodec | undefined,
  work: () => Promise<void>,
): Promise<void> {
  let release = (): void => undefined;
  if (codec) codec.changing = new Promise((resolve) => (release = resolve));
  try {
    await work();
  } finally {
    if (codec) codec.changing = undefined;
    release();
  }
}
