/** Backups of everything: made, put into a folder by themselves, and thought of when it is time. */
import * as v from 'valibot';
import type { Backup, BackupItem, BackupTable } from '../store/backupFile.ts';
import type { Folder } from '../store/folder.ts';
import { ANY, type Rows } from '../store/rows.ts';
import { DEMO_ID } from '../examples/demo.ts';
import { isExample } from '../platform/exampleIds.ts';
import type { Shelf } from '../platform/persisted.svelte.ts';
import type { Sync } from '../repository/sync.ts';

const DAY_MS = 86_400_000;
/** So much changed since the last backup asks for one at once; anything does after so long. */
const MANY = 5;
const LONG_DAYS = 14;

type Source = Pick<Sync<object>, 'texts' | 'changedSince'>;

export type FolderState = 'none' | 'open' | 'closed' | 'failed';

const shape = v.object({ at: v.number(), since: v.optional(v.number()) });
/** A change is written a little after it was made. */
const WRITTEN_MS = 60_000;
const PLAIN_ALLOWED = 'tidemark-folder-plain';

/** What is known of the lock. */
interface LockBeside {
  isSealed: () => boolean;
  shelf: Shelf | undefined;
}

const ROW = { table: 'small', id: 'backup' } as const;

export class Backups {
  /** When the last backup was made, ms since 1970; 0 where none was. */
  at = $state(0);
  /** What is marked later than this was changed since. Earlier than `at` where the clock was set back after it. */
  #since = $state(0);
  folder = $state.raw<Folder | undefined>(undefined);
  folderState = $state<FolderState>('none');
  readonly #sources: Readonly<Record<BackupTable, Source>>;
  readonly #small: () => Record<string, string>;
  #rows: Rows | undefined;
  #writing: Promise<void> = Promise.resolve();
  /** Whether plain backups go into the folder though what is kept here is sealed. */
  #isPlainAllowed = $state(false);
  readonly #lock: LockBeside;

  constructor(
    sources: Readonly<Record<BackupTable, Source>>,
    small: () => Record<string, string>,
    lock: LockBeside,
  ) {
    this.#sources = sources;
    this.#small = small;
    this.#lock = lock;
    this.#isPlainAllowed = lock.shelf?.getItem(PLAIN_ALLOWED) === '1';
  }

  /** Whether nothing goes into the folder, since it would lie there in plain text. */
  get isHeldByLock(): boolean {
    return this.#lock.isSealed() && !this.#isPlainAllowed;
  }

  /** Whether plain backups may go into the folder under a lock. */
  async allowPlain(isAllowed: boolean, now: Date): Promise<void> {
    this.#isPlainAllowed = isAllowed;
    try {
      this.#lock.shelf?.setItem(PLAIN_ALLOWED, isAllowed ? '1' : '');
    } catch {
      // a denied storage only means that it is asked again
    }
    if (isAllowed) await this.intoFolder(now);
  }

  async load(rows: Rows): Promise<void> {
    this.#rows = rows;
    const [at, since] = [this.at, this.#since];
    if (at > (await this.#adopt())) {
      // made while the store was still being opened
      [this.at, this.#since] = [at, since];
      await this.#keep(at, since);
    }
    rows.watch('small', () => void this.#adopt());
    try {
      const { keptFolder } = await import('../store/folder.ts');
      const kept = await keptFolder();
      this.folder = kept?.folder;
      this.folderState = kept ? (kept.isOpen ? 'open' : 'closed') : 'none';
    } catch {
      this.folderState = 'none'; // a browser that keeps no handle has no folder to write to
    }
  }

  /** How many of one's own entries changed since the last backup; invented children do not count. */
  get changed(): number {
    return Object.values(this.#sources)
      .flatMap((source) => source.changedSince(this.#since))
      .filter((id) => !isExample(id) && id !== DEMO_ID).length;
  }

  /** Whether it is time to be reminded. */
  isDue(now: number): boolean {
    const { changed } = this;
    return changed >= MANY || (changed > 0 && this.at > 0 && now - this.at > LONG_DAYS * DAY_MS);
  }

  /** Everything as it is here now, kept or not. */
  everything(now: Date): Backup {
    const items = Object.entries(this.#sources).flatMap(([table, source]) =>
      [...source.texts()].flatMap(([id, text]): BackupItem[] =>
        text ? [{ table: table as BackupTable, id, text }] : [],
      ),
    );
    return { at: now.toISOString(), items, small: this.#small() };
  }

  /** A backup was made, whole. */
  async made(now: number): Promise<void> {
    await this.#keep(now, now); // said once it is kept: a lock may be set in the next moment
    this.at = this.#since = now;
  }

  /**
   * Looks at the clock. One that was set back behind the last backup marks what is changed now as older
   * than it: from then on all that is marked later counts, rather too much than too little.
   */
  async look(now: number): Promise<void> {
    if (now >= this.#since) return;
    this.#since = now - WRITTEN_MS;
    await this.#keep(this.at, this.#since);
  }

  async #keep(at: number, since: number): Promise<void> {
    const text = JSON.stringify({ at, since });
    try {
      await this.#rows?.write([{ ...ROW, base: ANY, text }]);
    } catch {
      // a store that takes nothing only means that the reminder comes again
    }
  }

  async choose(now: Date): Promise<void> {
    try {
      const { chooseFolder } = await import('../store/folder.ts');
      const folder = await chooseFolder();
      if (!folder) return;
      this.folder = folder;
      this.folderState = 'open';
    } catch {
      this.folderState = 'failed';
      return;
    }
    await this.intoFolder(now);
  }

  async allowAgain(now: Date): Promise<void> {
    const { askAgain } = await import('../store/folder.ts');
    if (!this.folder || !(await askAgain(this.folder))) return;
    this.folderState = 'open';
    await this.intoFolder(now);
  }

  async leaveFolder(): Promise<void> {
    const { forgetFolder } = await import('../store/folder.ts');
    await forgetFolder();
    this.folder = undefined;
    this.folderState = 'none';
  }

  /** Writes a backup into the folder; one file a day, so that those of earlier days stay. */
  intoFolder(now: Date): Promise<void> {
    this.#writing = this.#writing.then(async () => {
      const { folder } = this;
      if (!folder || this.folderState !== 'open' || this.isHeldByLock) return;
      try {
        const [{ writeInto }, { backupBytes }] = await Promise.all([
          import('../store/folder.ts'),
          import('../store/backupFile.ts'),
        ]);
        await writeInto(folder, backupName(now), backupBytes(this.everything(now)));
        await this.made(now.getTime());
      } catch {
        this.folderState = 'failed';
      }
    });
    return this.#writing;
  }

  /** Takes over what the store has, and answers when that backup was made; 0 where it has none. */
  async #adopt(): Promise<number> {
    try {
      const row = await this.#rows?.one(ROW);
      const read = row && v.safeParse(shape, JSON.parse(row.text));
      if (!read?.success) return 0;
      this.at = read.output.at;
      this.#since = read.output.since ?? this.at;
      return this.at;
    } catch {
      return 0; // not understood, or the store was closed: as if no backup were known
    }
  }
}

/** The name of a backup's file, by the day on this machine's calendar. */
export function backupName(now: Date): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `tidemark-${day}.tidemark-backup.json`;
}
