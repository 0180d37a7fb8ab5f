/**
 * The atlas with what is one's own in it: sources and reflexes that were typed or opened, kept in the
 * store and read anew whenever they change. Everything that asks the atlas asks this one.
 */
import { buildAtlas, type Atlas } from '../atlas/atlas.ts';
import type { AtlasParts } from '../atlas/types.ts';
import type { OwnEntry } from '../atlas/own.ts';
import { OWN_PREFIX } from '../atlas/ownId.ts';
import type { Row } from '../atlas/ownTable.ts';
import type { OwnRow } from '../store/own.ts';
import type { Store } from '../store/store.ts';
import { History } from './history.svelte.ts';

/** What was done to one's own, for the sentence beside "Undo". */
export type OwnDid = 'added' | 'changed' | 'removed' | 'switched-on' | 'switched-off';

/** What reads entries into parts; loaded when there is something to read. */
interface Reader {
  read(
    parts: AtlasParts,
    entries: readonly OwnEntry[],
  ): { parts: AtlasParts; unread: readonly string[] };
  fromRow(row: OwnRow): OwnEntry | undefined;
  toRow(entry: OwnEntry): OwnRow;
}

async function loadReader(): Promise<Reader> {
  const [{ withOwn }, { PROSE }, { ownRow, readOwnRow }] = await Promise.all([
    import('../atlas/own.ts'),
    import('../atlas/prose.ts'),
    import('../store/own.ts'),
  ]);
  return {
    read: (parts, entries) => withOwn({ parts, prose: PROSE }, entries),
    fromRow: readOwnRow,
    toRow: ownRow,
  };
}

type OwnStore = Pick<Store, 'own' | 'putOwn' | 'removeOwn' | 'watchOwn'>;

export class Library {
  #entries = $state.raw<readonly OwnEntry[]>([]);
  /** Ids of stored rows that are not understood: left as they are. */
  damaged = $state.raw<readonly string[]>([]);
  #reader = $state.raw<Reader | undefined>(undefined);
  /** A table that was opened from a file and waits to be looked through. */
  opened = $state.raw<{ name: string; rows: readonly Row[] } | undefined>(undefined);
  /** Whether the last write was refused. */
  refusedWrite = $state(false);
  told = $state.raw<{ did: OwnDid; undone: boolean } | undefined>(undefined);
  readonly history = new History<readonly OwnEntry[], OwnDid>();
  readonly #builtIn: AtlasParts;
  #store: OwnStore | undefined;
  #writing: Promise<void> = Promise.resolve();

  readonly #on = $derived.by(() => this.#merged(this.#entries.filter((entry) => entry.on)));
  readonly #all = $derived.by(() => this.#merged(this.#entries));
  readonly #atlas = $derived.by(() => buildAtlas(this.#on.parts));
  readonly #whole = $derived.by(() =>
    this.#entries.every((entry) => entry.on) ? this.#atlas : buildAtlas(this.#all.parts),
  );

  /** What takes part: everything built in, and what is one's own and switched on. */
  readonly atlas: Atlas;
  /** The same with what is switched off: a record may hold findings on it. */
  readonly known: Atlas;

  constructor(builtIn: AtlasParts) {
    this.#builtIn = builtIn;
    this.atlas = live(() => this.#atlas);
    this.known = live(() => this.#whole);
  }

  get entries(): readonly OwnEntry[] {
    return this.#entries;
  }

  get parts(): AtlasParts {
    return this.#on.parts;
  }

  /** Entries that take no part since what they name has gone. */
  get unread(): readonly string[] {
    return this.#all.unread;
  }

  /** Settles when all that was changed is written. */
  get written(): Promise<void> {
    return this.#writing;
  }

  /** Takes what the store holds. */
  async load(store: OwnStore): Promise<void> {
    this.#store = store;
    await this.#adopt();
    store.watchOwn(() => {
      this.#adopt().catch(() => undefined); // the store was closed meanwhile: what is here stays
    });
  }

  /** Adds an entry, or puts it in place of the one with its id. The caller has read it without problems. */
  async put(entry: OwnEntry): Promise<void> {
    await this.#ready();
    const isKnown = this.#entries.some(({ id }) => id === entry.id);
    this.#become(
      isKnown
        ? this.#entries.map((old) => (old.id === entry.id ? entry : old))
        : [...this.#entries, entry],
      isKnown ? 'changed' : 'added',
    );
  }

  remove(id: string): void {
    this.#become(
      this.#entries.filter((entry) => entry.id !== id),
      'removed',
    );
  }

  toggle(id: string): void {
    const on = !this.#entries.find((entry) => entry.id === id)?.on;
    this.#become(
      this.#entries.map((entry) => (entry.id === id ? { ...entry, on } : entry)),
      on ? 'switched-on' : 'switched-off',
    );
  }

  undo(): void {
    const step = this.history.undo();
    if (!step) return;
    this.#write(step.value);
    this.told = { did: step.did, undone: true };
  }

  redo(): void {
    const step = this.history.redo();
    if (!step) return;
    this.#write(step.value);
    this.told = { did: step.did, undone: false };
  }

  hush(): void {
    this.told = undefined;
  }

  #merged(entries: readonly OwnEntry[]): { parts: AtlasParts; unread: readonly string[] } {
    const reader = this.#reader;
    return entries.length > 0 && reader
      ? reader.read(this.#builtIn, entries)
      : { parts: this.#builtIn, unread: [] };
  }

  async #ready(): Promise<Reader> {
    this.#reader ??= await loadReader();
    return this.#reader;
  }

  #become(next: readonly OwnEntry[], did: OwnDid): void {
    this.history.record(this.#entries, next, did);
    this.#write(next);
    this.told = { did, undone: false };
  }

  /** Shows a state and writes what differs from the one before. */
  #write(next: readonly OwnEntry[]): void {
    const before = this.#entries;
    this.#entries = next;
    const changed = next.filter((entry) => !before.includes(entry));
    const gone = before.filter((old) => !next.some(({ id }) => id === old.id));
    this.#writing = this.#writing.then(async () => {
      try {
        const reader = await this.#ready();
        for (const entry of changed) await this.#store?.putOwn(reader.toRow(entry));
        for (const { id } of gone) await this.#store?.removeOwn(id);
        this.refusedWrite = false;
      } catch {
        this.refusedWrite = true;
      }
    });
  }

  /** Reads the store anew; a change made by another page replaces what is here, and ends undo. */
  async #adopt(): Promise<void> {
    const store = this.#store;
    if (!store) return;
    await this.#writing;
    const seen = this.#entries;
    const rows = await store.own();
    if (rows.length === 0 && seen.length === 0) return;
    const reader = await this.#ready();
    if (seen !== this.#entries) return; // changed here meanwhile: the write that follows calls again
    const read = rows.map((row) => ({ row, entry: reader.fromRow(row) }));
    this.damaged = read.filter(({ entry }) => !entry).map(({ row }) => row.id);
    const textOf = (id: string): string | undefined =>
      seen.filter((entry) => entry.id === id).map((entry) => reader.toRow(entry).text)[0];
    const sound = read.flatMap(({ entry }) => entry ?? []);
    const same =
      sound.length === seen.length &&
      sound.every((entry) => textOf(entry.id) === reader.toRow(entry).text);
    if (same) return;
    this.history.forget();
    this.#entries = sound;
  }
}

/** An atlas whose every part is asked for anew, so that whoever reads it follows its changes. */
const live = (now: () => Atlas): Atlas => ({
  get reflexes() {
    return now().reflexes;
  },
  get sources() {
    return now().sources;
  },
  get milestones() {
    return now().milestones;
  },
  get sequences() {
    return now().sequences;
  },
  get claims() {
    return now().claims;
  },
  get counts() {
    return now().counts;
  },
});

/** Whether a source or reflex is one's own. */
export const isOwn = (id: string): boolean => id.startsWith(OWN_PREFIX);
