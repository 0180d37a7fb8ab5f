/**
 * The atlas with what is one's own in it: sources and reflexes that were typed or opened, kept in the
 * store and read anew whenever they change. Everything that asks the atlas asks this one.
 */
import { buildAtlas, type Atlas } from '../atlas/core.ts';
import type { AtlasParts } from '../atlas/types.ts';
import type { OwnEntry } from '../atlas/own.ts';
import { OWN_PREFIX } from '../atlas/ownId.ts';
import type { Row } from '../atlas/ownTable.ts';
import type { Change } from '../store/rows.ts';
import type { OwnRow } from '../store/own.ts';
import { newId } from '../platform/ids.ts';
import { Keeping } from './saveStatus.svelte.ts';
import { OwnKept } from './keptEntries.svelte.ts';

/** What was done to one's own beside what is done to every entry, for the sentence beside "Undo". */
type OwnDid = 'added' | 'changed' | 'switched-on' | 'switched-off';

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
  const [{ withOwn }, { faultless }, { PROSE }, { ownRow, readOwnRow }] = await Promise.all([
    import('../atlas/own.ts'),
    import('../atlas/check.ts'),
    import('../atlas/prose.ts'),
    import('../store/own.ts'),
  ]);
  return {
    read(parts, entries) {
      const read = withOwn({ parts, prose: PROSE }, entries);
      return { ...read, parts: faultless(read.parts) };
    },
    fromRow: readOwnRow,
    toRow: ownRow,
  };
}

export class Library extends OwnKept<OwnEntry, OwnDid> {
  #reader = $state.raw<Reader | undefined>(undefined);
  /** A table that was opened from a file and waits to be looked through. */
  opened = $state.raw<{ name: string; rows: readonly Row[] } | undefined>(undefined);
  readonly #core: AtlasParts;
  #further = $state.raw<((parts: AtlasParts) => AtlasParts) | undefined>(undefined);
  readonly #builtIn = $derived.by(() => this.#further?.(this.#core) ?? this.#core);

  readonly #on = $derived.by(() => this.#merged(this.entries.filter((entry) => entry.on)));
  readonly #all = $derived.by(() => this.#merged(this.entries));
  readonly #atlas = $derived.by(() => buildAtlas(this.#on.parts));
  readonly #whole = $derived.by(() =>
    this.entries.every((entry) => entry.on) ? this.#atlas : buildAtlas(this.#all.parts),
  );

  /** What takes part: everything built in, and what is one's own and switched on. */
  readonly atlas: Atlas;
  /** The same with what is switched off: a record may hold findings on it. */
  readonly known: Atlas;

  /** @param core what is judged by; what stands beside it is fetched when it is first shown */
  constructor(core: AtlasParts, keeping = new Keeping()) {
    super(
      {
        table: 'own',
        ready: () => this.#ready(),
        write: (entry) => this.#reader?.toRow(entry).text ?? '',
        read: (id, text) => this.#reader?.fromRow({ id, text }),
      },
      () => `${OWN_PREFIX}${newId()}`,
      keeping,
    );
    this.#core = core;
    this.atlas = live(() => this.#atlas);
    this.known = live(() => this.#whole);
  }

  /**
   * Fetches sources and counts that nothing is judged by. What is judged stays as it is, so a page need
   * not wait for them.
   */
  async fetchWhole(): Promise<void> {
    if (this.#further) return;
    const { withFurther } = await import('../atlas/further.ts');
    this.#further = withFurther;
  }

  get parts(): AtlasParts {
    return this.#on.parts;
  }

  /** Entries that take no part since what they name has gone. */
  get unread(): readonly string[] {
    return this.#all.unread;
  }

  /** Adds an entry, or puts it in place of the one with its id. The caller has read it without problems. */
  async put(entry: OwnEntry): Promise<void> {
    await this.#ready();
    const isKnown = this.entries.some(({ id }) => id === entry.id);
    this.become(
      isKnown
        ? this.entries.map((old) => (old.id === entry.id ? entry : old))
        : [...this.entries, entry],
      isKnown ? 'changed' : 'added',
    );
  }

  /** An entry read from its stored text; undefined when it is not one. */
  async understood(id: string, text: string): Promise<OwnEntry | undefined> {
    return (await this.#ready()).fromRow({ id, text });
  }

  /** Fetches what reads entries: an action that needs it then needs no time of its own. */
  async ready(): Promise<void> {
    await this.#ready();
  }

  toggle(id: string): void {
    const on = !this.entries.find((entry) => entry.id === id)?.on;
    this.become(
      this.entries.map((entry) => (entry.id === id ? { ...entry, on } : entry)),
      on ? 'switched-on' : 'switched-off',
    );
  }

  /** Takes entries in beside or in place of those here, as one change. What reads them is made `ready` before. */
  takeIn(entries: readonly OwnEntry[], stroke?: number, beside?: readonly Change[]): boolean {
    return this.bringIn(entries, stroke, beside);
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
}

/** An atlas whose every part is asked for anew, so that whoever reads it follows its changes. */
const live = (now: () => Atlas): Atlas => ({
  get reflexes() {
    return now().reflexes;
  },
  get variants() {
    return now().variants;
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
