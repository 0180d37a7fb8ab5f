/**
 * The lock on what is kept here. The key is nowhere but in this page's memory: to lock is to load the
 * page anew, so that nothing that was read stays behind in it.
 */
import { LOCK_ROW, LockCodec } from '../store/lockCodec.ts';
import { holding, lockIn, lockModules, withKey } from './storedLock.ts';
import type { Rows } from '../store/rows.ts';
import { canSeal } from '../store/seal.ts';
import type { Shelf } from '../platform/persisted.svelte.ts';
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

type Said =
  | { what: 'in-use'; at: number }
  | { what: 'lock' }
  /** What the others seal with from now on: what they still hold must not be left in plain text, nor lost. */
  | { what: 'changed'; key: CryptoKey | undefined; keyId: string };

export interface LockOutside {
  shelf: Shelf | undefined;
  /** Names of the database. */
  database: string;
  /** What stands in a field is taken in. */
  leaving: () => void;
  /** Settles when all that was changed is kept; false where it could not be. */
  kept: () => Promise<boolean>;
  /** The key is there: what was sealed outside of the store may be read. */
  opened: () => Promise<void>;
  /** Loads the page anew. */
  reload: () => void;
  now: () => number;
}

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
  #rows: Pick<Rows, 'one'> | undefined;
  #used: number;
  /** What the clock said when it was looked at last. */
  #seen: number;
  #told = 0;
  #going = false;
  /** It was to lock while a talk was shown. */
  #due = false;
  #opened: () => void = () => undefined;
  readonly #outside: LockOutside;
  readonly #channel: BroadcastChannel | undefined;

  constructor(outside: LockOutside) {
    this.#outside = outside;
    this.#used = this.#seen = outside.now();
    const minutes = Number(outside.shelf?.getItem(MINUTES));
    if (IDLE_MINUTES.some((one) => one === minutes)) this.minutes = minutes;
    // nothing of the app is shown before the store has said whether it is locked
    if (outside.shelf?.getItem(HINT)) this.standing = 'locked';
    if (typeof BroadcastChannel === 'undefined') return;
    this.#channel = new BroadcastChannel(CHANNEL);
    this.#channel.onmessage = ({ data }: MessageEvent<Said>) => {
      if (data.what === 'in-use') this.#used = Math.max(this.#used, data.at);
      else if (data.what === 'lock') void this.lock(false);
      else void this.#moved(data.key, data.keyId);
    };
  }

  /** Whether there is a lock, given or not. */
  get isSet(): boolean {
    return this.standing !== 'none' && this.standing !== 'unknown';
  }

  /** Looks whether the store is locked, and settles once it may be read. */
  async begin(rows: Rows): Promise<void> {
    this.#rows = rows;
    // no other row is read: a sealed one met before the passphrase means that the lock was set meanwhile
    const row = await rows.one(LOCK_ROW);
    if (!row) {
      this.#remember(false);
      this.standing = 'none';
      return;
    }
    const { readLock } = await import('../store/lock.ts');
    const record = readLock(row.text);
    this.#remember(true);
    const isOpen = new Promise<void>((resolve) => (this.#opened = resolve));
    this.standing = record ? 'locked' : 'broken';
    this.ready = record !== undefined;
    await isOpen;
  }

  /** Seconds before a passphrase may be tried again. */
  wait(): number {
    return secondsLeft(this.#outside.shelf, this.#outside.now());
  }

  /** Opens with a passphrase; false where it is another one. */
  async unlock(passphrase: string): Promise<boolean> {
    const { shelf, now, database } = this.#outside;
    if (this.wait() > 0) return false;
    wasWrong(shelf, now()); // counted before it is tried: a reload in the middle is no way around
    const [{ openLock }, { recode, LockMoved }] = await lockModules();
    const found = await lockIn(this.#rows);
    if (!found) {
      this.#goneBehindGate();
      return true;
    }
    const key = await openLock(found.record, passphrase);
    if (!key || !this.codec) return false;
    const codec = withKey(new LockCodec(), key, found.record);
    // rows that a window without the key left plain are sealed now
    const same = { lock: found.text, was: found.text };
    const sealing = { name: database, from: codec, to: codec, ...same, onlyPlain: true };
    try {
      await recode(sealing);
    } catch (error) {
      // what the browser refuses to write stays plain for now; a passphrase of before opens nothing
      if (error instanceof LockMoved) return false;
    }
    wasRight(shelf);
    withKey(this.codec, key, found.record);
    await this.#outside.opened();
    this.#used = this.#clock();
    this.standing = 'open';
    this.#opened();
    return true;
  }

  /** Sets a lock and seals every row. Rejects where it cannot be; then nothing has changed. */
  async set(passphrase: string): Promise<void> {
    const [{ newLock }, { recode }] = await lockModules();
    const { lock, key } = await newLock(passphrase);
    await this.#outside.kept();
    await holding(this.codec, async () => {
      const to = withKey(new LockCodec(), key, lock);
      const text = JSON.stringify(lock);
      if (this.codec) this.codec.reading = key; // the page sees sealed rows before this is done
      const name = this.#outside.database;
      await recode({ name, from: new LockCodec(), to, lock: text, was: undefined });
      if (this.codec) withKey(this.codec, key, lock);
    });
    this.#remember(true);
    this.#used = this.#clock();
    this.standing = 'open';
    this.#tell({ what: 'changed', key, keyId: lock.keyId ?? '' });
  }

  /** Another passphrase for the same rows; false where the old one is wrong. */
  async change(passphrase: string, next: string): Promise<boolean> {
    const [{ rewrap }, { recode }] = await lockModules();
    const found = await lockIn(this.#rows);
    const lock = found && (await this.#tried(() => rewrap(found.record, passphrase, next)));
    const { codec: own } = this;
    if (!lock || !own?.key) return false;
    const codec = withKey(new LockCodec(), own.key, lock);
    const text = JSON.stringify(lock);
    const name = this.#outside.database;
    const was = found.text;
    await recode({ name, from: codec, to: codec, lock: text, was, onlyPlain: true });
    this.#tell({ what: 'changed', key: own.key, keyId: own.keyId });
    return true;
  }

  /** Takes the lock away: every row lies open again; false where the passphrase is wrong. */
  async remove(passphrase: string): Promise<boolean> {
    const [{ openLock }, { recode }] = await lockModules();
    const found = await lockIn(this.#rows);
    const key = found && (await this.#tried(() => openLock(found.record, passphrase)));
    if (!key) return false;
    await this.#outside.kept();
    await holding(this.codec, async () => {
      const from = withKey(new LockCodec(), key, found.record);
      if (this.codec) this.codec.reading = key;
      const name = this.#outside.database;
      await recode({ name, from, to: new LockCodec(), lock: undefined, was: found.text });
      if (this.codec) this.codec.key = undefined;
    });
    this.#remember(false);
    this.standing = 'none';
    this.#tell({ what: 'changed', key: undefined, keyId: '' });
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
    const now = this.#clock();
    if (this.#due) return;
    if (this.#isIdle(now)) return void this.lock();
    this.#used = now;
    if (this.standing !== 'open' || Math.abs(now - this.#told) < TELL_MS) return;
    this.#told = now;
    this.#tell({ what: 'in-use', at: now });
  }

  /** Looks at the clock: asked now and then, and when the page comes into view again. */
  look(): void {
    if (this.#due && !this.onStage) void this.#leave();
    else if (!this.#due && this.#isIdle(this.#clock())) void this.lock();
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

  /** What the clock says. One that was set back takes nothing from the time without use. */
  #clock(): number {
    const now = this.#outside.now();
    if (now < this.#seen) this.#used -= this.#seen - now;
    this.#seen = now;
    this.#used = Math.min(this.#used, now);
    return now;
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

  /** Another window has set, changed or taken away the lock: this one keeps what it holds, and begins anew. */
  async #moved(key: CryptoKey | undefined, keyId: string): Promise<void> {
    if (this.standing === 'locked' || this.standing === 'broken') {
      if (!key) this.#goneBehindGate();
      return;
    }
    if (this.codec) Object.assign(this.codec, { key, keyId });
    this.standing = key ? 'open' : 'none';
    await this.#leave();
  }

  /** The lock was taken away while this window stood before it. */
  #goneBehindGate(): void {
    this.#remember(false);
    this.#outside.reload();
  }

  async #leave(): Promise<void> {
    if (this.#going) return;
    this.#going = true;
    this.#outside.leaving();
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
