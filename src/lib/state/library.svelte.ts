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
import type { Rows } from '../store/rows.ts';
import { History } from './history.svelte.ts';
import { newId } from './ids.ts';
import { Keeping } from './keeping.svelte.ts';
import { byId, settled, stepped } from './shelved.ts';
import { Sync } from './sync.ts';

/** What was done to one's own, for the sentence beside "Undo". */
export type OwnDid =
  'added' | 'changed' | 'removed' | 'switched-on' | 'switched-off' | 'brought-back';

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

export class Library {
  #entries = $state.raw<readonly OwnEntry[]>([]);
  /** Ids of stored rows that are not understood: left as they are. */
  damaged = $state.raw<readonly string[]>([]);
  #reader = $state.raw<Reader | undefined>(undefined);
  /** A table that was opened from a file and waits to be looked through. */
  opened = $state.raw<{ name: string; rows: readonly Row[] } | undefined>(undefined);
  told = $state.raw<{ did: OwnDid; undone: boolean } | undefined>(undefined);
  readonly history = new History<readonly OwnEntry[], OwnDid>();
  readonly #builtIn: AtlasParts;
  readonly #keeping: Keeping;
  readonly #sync: Sync<OwnEntry>;

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

  constructor(builtIn: AtlasParts, keeping = new Keeping()) {
    this.#builtIn = builtIn;
    this.#keeping = keeping;
    this.#sync = new Sync<OwnEntry>(
      {
        table: 'own',
        ready: () => this.#ready(),
        write: (entry) => this.#reader?.toRow(entry).text ?? '',
        read: (id, text) => this.#reader?.fromRow({ id, text }),
        // of two changes to one entry neither is lost: the one made here becomes an entry of its own
        merge: ({ mine, theirs }) => {
          if (!mine || !theirs) return { value: mine ?? theirs };
          const id = `${OWN_PREFIX}${newId()}`;
          return { value: theirs, also: { id, value: { ...mine, id } } };
        },
        shown: () => byId(this.#entries),
        settle: (entries) => (this.#entries = settled(this.#entries, entries)),
        wasRead: () => (this.damaged = this.#sync.unread),
      },
      keeping,
    );
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

  /** Settles when all that was changed is written, or was refused. */
  get written(): Promise<void> {
    return this.#sync.written;
  }

  /** What goes into a backup, and how much of it is new since the last. */
  get backed(): Pick<Sync<OwnEntry>, 'texts' | 'look' | 'changedSince'> {
    return this.#sync;
  }

  /** Whether the last write was refused. */
  get refusedWrite(): boolean {
    return this.#keeping.troubleOf(this.#sync) !== undefined;
  }

  /** Takes what the store holds. */
  load(rows: Rows): Promise<void> {
    return this.#sync.load(rows);
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

  /** An entry read from its stored text; undefined when it is not one. */
  async understood(id: string, text: string): Promise<OwnEntry | undefined> {
    return (await this.#ready()).fromRow({ id, text });
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

  /** Takes entries in beside or in place of those here, as one change. */
  async takeIn(entries: readonly OwnEntry[], stroke?: number): Promise<void> {
    await this.#ready();
    if (entries.length > 0)
      this.#become(settled(this.#entries, byId(entries)), 'brought-back', stroke);
  }

  undo(): void {
    const step = this.history.undo();
    if (!step) return;
    this.#write(stepped(step, this.#entries));
    this.told = { did: step.did, undone: true };
  }

  redo(): void {
    const step = this.history.redo();
    if (!step) return;
    this.#write(stepped(step, this.#entries));
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

  #become(next: readonly OwnEntry[], did: OwnDid, stroke?: number): void {
    if (this.#keeping.kind === 'newer') return;
    this.history.record(this.#entries, next, did, stroke);
    this.#write(next);
    this.told = { did, undone: false };
  }

  /** Shows a state; what differs from the store is written. */
  #write(next: readonly OwnEntry[]): void {
    this.#entries = next;
    this.#sync.changed();
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
