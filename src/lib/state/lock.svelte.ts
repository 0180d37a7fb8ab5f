/**
 * The lock on what is kept here. The key is nowhere but in this page's memory: to lock is to load the
 * page anew, so that nothing that was read stays behind in it.
 */
import { LOCK_ROW, type LockCodec } from '../store/lockCodec.ts';
import type { Rows } from '../store/rows.ts';
import type { LockRecord } from '../store/lock.ts';
import { canSeal } from '../store/seal.ts';
import type { Shelf } from './settings.svelte.ts';
import { secondsLeft, wasRight, wasWrong } from './tries.ts';

/**
 * `unknown`: the store has not answered. `none`: there is no lock. `locked`: it waits for the
 * passphrase. `open`: the passphrase was given. `broken`: sealed, and what the key was wrapped in is gone.
 */
export type LockStanding = 'unknown' | 'none' | 'locked' | 'open' | 'broken';

export const IDLE_MINUTES = [2, 5, 10, 30, 60] as const;
const DEFAULT_MINUTES = 10;

const HINT = 'tidemark-locked';
const MINUTES = 'tidemark-lock-minutes';
const CHANNEL = 'tidemark-lock';
/** How often other windows are told that this one is in use, ms. */
const TELL_MS = 10_000;

type Said = { what: 'in-use'; at: number } | { what: 'lock' } | { what: 'changed' };

export interface LockOutside {
  shelf: Shelf | undefined;
  /** Names of the database. */
  database: string;
  /** Settles when all that was changed is kept; false where it could not be. */
  kept: () => Promise<boolean>;
  /** The key is there: what was sealed outside of the store may be read. */
  opened: () => Promise<void>;
  /** Loads the page anew. */
  reload: () => void;
  now: () => number;
}

const modules = () =>
  Promise.all([
    import('../store/lock.ts'),
    import('../store/recode.ts'),
    import('../store/lockCodec.ts'),
  ]);

export class Lock {
  standing = $state<LockStanding>('unknown');
  /** Whether a passphrase can be tried already. */
  ready = $state(false);
  /** Minutes without use after which it locks. */
  minutes = $state<number>(DEFAULT_MINUTES);
  /** Whether a talk is shown: it is not broken off, the lock falls once it is left. */
  onStage = false;
  /** Whether what is kept can be sealed in this browser and on this page. */
  readonly possible = canSeal();
  codec: LockCodec | undefined;
  #record: LockRecord | undefined;
  #used: number;
  #told = 0;
  #going = false;
  /** It was to lock while a talk was shown. */
  #due = false;
  #opened: () => void = () => undefined;
  readonly #outside: LockOutside;
  readonly #channel: BroadcastChannel | undefined;

  constructor(outside: LockOutside) {
    this.#outside = outside;
    this.#used = outside.now();
    const minutes = Number(outside.shelf?.getItem(MINUTES));
    if (IDLE_MINUTES.some((one) => one === minutes)) this.minutes = minutes;
    // nothing of the app is shown before the store has said whether it is locked
    if (outside.shelf?.getItem(HINT)) this.standing = 'locked';
    if (typeof BroadcastChannel === 'undefined') return;
    this.#channel = new BroadcastChannel(CHANNEL);
    this.#channel.onmessage = ({ data }: MessageEvent<Said>) => {
      if (data.what === 'in-use') this.#used = Math.max(this.#used, data.at);
      else if (data.what === 'lock') void this.lock(false);
      else if (this.standing !== 'locked') void this.#leave();
    };
  }

  /** Whether there is a lock, given or not. */
  get isSet(): boolean {
    return this.standing !== 'none' && this.standing !== 'unknown';
  }

  /** Looks whether the store is locked, and settles once it may be read. */
  async begin(rows: Rows): Promise<void> {
    // no other row is read: a sealed one met before the passphrase means that the lock was set meanwhile
    const row = await rows.one(LOCK_ROW);
    if (!row) {
      this.#remember(false);
      this.standing = 'none';
      return;
    }
    const { readLock } = await import('../store/lock.ts');
    this.#record = readLock(row.text);
    this.#remember(true);
    const isOpen = new Promise<void>((resolve) => (this.#opened = resolve));
    this.standing = this.#record ? 'locked' : 'broken';
    this.ready = this.#record !== undefined;
    await isOpen;
  }

  /** Seconds before a passphrase may be tried again. */
  wait(): number {
    return secondsLeft(this.#outside.shelf, this.#outside.now());
  }

  /** Opens with a passphrase; false where it is another one. */
  async unlock(passphrase: string): Promise<boolean> {
    const { shelf, now, database } = this.#outside;
    const record = this.#record;
    if (!record || this.wait() > 0) return false;
    wasWrong(shelf, now()); // counted before it is tried: a reload in the middle is no way around
    const [{ openLock }, { recode }, { LockCodec: Codec }] = await modules();
    const key = await openLock(record, passphrase);
    if (!key || !this.codec) return false;
    wasRight(shelf);
    this.codec.key = key;
    // rows that a window without the key left plain are sealed now
    const codec = new Codec();
    codec.key = key;
    const text = JSON.stringify(record);
    const sealing = { name: database, from: codec, to: codec, lock: text, onlyPlain: true };
    await recode(sealing).catch(() => undefined);
    await this.#outside.opened();
    this.#used = now();
    this.standing = 'open';
    this.#opened();
    return true;
  }

  /** Sets a lock and seals every row. Rejects where the browser refuses; then nothing has changed. */
  async set(passphrase: string): Promise<void> {
    const [{ newLock }, { recode }, { LockCodec: Codec }] = await modules();
    const { lock, key } = await newLock(passphrase);
    await this.#outside.kept();
    const to = new Codec();
    to.key = key;
    const text = JSON.stringify(lock);
    if (this.codec) this.codec.reading = key; // the page sees sealed rows before this is done
    await recode({ name: this.#outside.database, from: new Codec(), to, lock: text });
    if (this.codec) this.codec.key = key;
    this.#record = lock;
    this.#remember(true);
    this.#used = this.#outside.now();
    this.standing = 'open';
    this.#tell({ what: 'changed' });
  }

  /** Another passphrase for the same rows; false where the old one is wrong. */
  async change(passphrase: string, next: string): Promise<boolean> {
    const [{ rewrap }, { recode }, { LockCodec: Codec }] = await modules();
    const lock = this.#record && (await this.#tried(() => rewrap(this.#record!, passphrase, next)));
    if (!lock) return false;
    const codec = new Codec();
    codec.key = this.codec?.key;
    const text = JSON.stringify(lock);
    const name = this.#outside.database;
    await recode({ name, from: codec, to: codec, lock: text, onlyPlain: true });
    this.#record = lock;
    return true;
  }

  /** Takes the lock away: every row lies open again; false where the passphrase is wrong. */
  async remove(passphrase: string): Promise<boolean> {
    const [{ openLock }, { recode }, { LockCodec: Codec }] = await modules();
    const key = this.#record && (await this.#tried(() => openLock(this.#record!, passphrase)));
    if (!key) return false;
    await this.#outside.kept();
    const from = new Codec();
    from.key = key;
    if (this.codec) this.codec.reading = key;
    await recode({ name: this.#outside.database, from, to: new Codec(), lock: undefined });
    if (this.codec) this.codec.key = undefined;
    this.#record = undefined;
    this.#remember(false);
    this.standing = 'none';
    this.#tell({ what: 'changed' });
    return true;
  }

  /** Locks here and, unless told by one, in every other window. What could not be kept is not thrown away. */
  async lock(andOthers = true): Promise<void> {
    if (this.standing !== 'open') return;
    if (andOthers) this.#tell({ what: 'lock' });
    if (this.onStage) this.#due = true;
    else await this.#leave();
  }

  /** The page is in use. */
  use(): void {
    const now = this.#outside.now();
    if (this.#due) return;
    if (this.#isIdle(now)) return void this.lock();
    this.#used = now;
    if (this.standing !== 'open' || now - this.#told < TELL_MS) return;
    this.#told = now;
    this.#tell({ what: 'in-use', at: now });
  }

  /** Looks at the clock: asked now and then, and when the page comes into view again. */
  look(): void {
    if (this.#due && !this.onStage) void this.#leave();
    else if (!this.#due && this.#isIdle(this.#outside.now())) void this.lock();
  }

  setMinutes(minutes: number): void {
    this.minutes = minutes;
    try {
      this.#outside.shelf?.setItem(MINUTES, String(minutes));
    } catch {
      // a denied storage only means that the customary time holds next time
    }
  }

  /** Sealed content was met without a key: another window has set a lock, or its record is gone. */
  async met(rows: Rows): Promise<void> {
    if (await rows.one(LOCK_ROW)) await this.#leave();
    else this.standing = 'broken';
  }

  #isIdle(now: number): boolean {
    return this.standing === 'open' && now - this.#used >= this.minutes * 60_000;
  }

  async #tried<T>(open: () => Promise<T | undefined>): Promise<T | undefined> {
    const { shelf, now } = this.#outside;
    if (this.wait() > 0) return undefined;
    wasWrong(shelf, now());
    const value = await open();
    if (value) wasRight(shelf);
    return value;
  }

  async #leave(): Promise<void> {
    if (this.#going) return;
    this.#going = true;
    if (await this.#outside.kept()) this.#outside.reload();
    this.#going = false;
  }

  #tell(said: Said): void {
    this.#channel?.postMessage(said);
  }

  #remember(isLocked: boolean): void {
    const { shelf } = this.#outside;
    try {
      if (isLocked) shelf?.setItem(HINT, '1');
      else shelf?.setItem(HINT, '');
    } catch {
      // a denied storage only means that the app is shown a moment before the lock is
    }
  }
}
