/**
 * One table of the store in step with what a page shows. Told of every change, it writes what differs
 * from the store, all of it in one transaction and only over what it has seen; what another window
 * wrote meanwhile is brought together with what was done here, so that neither is lost.
 */
import { StoreError, type Change, type Entry, type Rows } from '../store/rows.ts';
import { caughtUp } from './caughtUp.ts';
import type { Keeping } from './saveStatus.svelte.ts';
import { Known, type Writing } from './knownRows.ts';
import type { Shape } from './entryKind.ts';
import { takeTyped } from '../drafts/typedField.svelte.ts';
import type { Left } from './unwritten.ts';

/** A row that is written with what is changed here, as long as that has not been undone before it was written. */
interface Beside {
  change: Change;
  holds: () => boolean;
}

const always = (): boolean => true;

/** More rounds than two windows could need for one change. */
const ROUNDS = 20;
/** How long it is waited after so many rounds before the next, ms. */
const AGAIN_MS = 1000;

export class Sync<T extends object> {
  readonly #shape: Shape<T>;
  readonly #keeping: Keeping;
  readonly #known: Known<T>;
  #beside: readonly Beside[] = [];
  /** What is being written: a page that goes now does not see whether it was. */
  #underWay: Writing<T> | undefined;
  readonly #opened: Promise<Rows>;
  #answer: (rows: Rows) => void = () => undefined;
  #working: Promise<void> = Promise.resolve();
  /** Another attempt after too many rounds. */
  #again: ReturnType<typeof setTimeout> | undefined;

  constructor(shape: Shape<T>, keeping: Keeping) {
    this.#shape = shape;
    this.#keeping = keeping;
    this.#known = new Known(shape);
    this.#opened = new Promise((resolve) => (this.#answer = resolve));
    keeping.add(() => this.changed());
  }

  /** Entries as a store is expected to hold them, before it has answered. */
  expect(values: ReadonlyMap<string, T>): void {
    this.#known.expect(values);
  }

  /** Ids of stored entries that are not understood. */
  get unread(): string[] {
    return [...this.#known.unread.keys()];
  }

  /** Everything as text by id: what is shown here, and what is stored and not understood. */
  texts(): Map<string, string> {
    const looked = this.look();
    const ids = new Set([...this.unread, ...this.#shape.shown().keys()]);
    return new Map([...ids].map((id) => [id, looked.get(id) ?? '']));
  }

  /** The same as it is now, each text made when it is asked for. */
  look(): { get(id: string): string | undefined } {
    const shown = this.#shape.shown();
    const { unread } = this.#known;
    return {
      get: (id) => {
        const value = shown.get(id);
        return value === undefined ? unread.get(id) : this.#shape.write(value);
      },
    };
  }

  /** Ids of what was written after a moment, ms since 1970, or is not written yet. */
  changedSince(at: number): string[] {
    return [...this.#shape.shown()].flatMap(([id, value]) =>
      this.#known.isNewSince(at, id, value) ? [id] : [],
    );
  }

  /**
   * What differs from the store by now, with what it was known to hold, and what is written with it. What
   * was taken back while it is being written differs too, should the store take the write all the same.
   */
  unwritten(): Left {
    const changes = this.#known.changes();
    const ids = new Set(changes.map(({ id }) => id));
    const shown = this.#shape.shown();
    const takenBack = (this.#underWay?.own ?? []).flatMap(({ id, text }) => {
      const now = shown.get(id);
      return ids.has(id) ? [] : [{ id, base: text, text: now && this.#shape.write(now) }];
    });
    return {
      entries: [
        ...changes.map(({ id, text }) => ({ id, base: this.#known.textOf(id), text })),
        ...takenBack,
      ],
      beside: this.#asked().map(({ change }) => change),
    };
  }

  /** Takes in what a page that has gone could not write any more, over what has come since. */
  async catchUp({ entries, beside }: Left): Promise<void> {
    if (entries.length + beside.length === 0) return;
    if (this.#shape.ready) await this.#shape.ready();
    const { settled, asked } = caughtUp(entries, this.#shape);
    this.#shape.settle(settled);
    this.ask([...beside, ...asked]);
    this.changed();
  }

  /** Settles when all that was changed is written, or was refused. */
  get written(): Promise<void> {
    return this.#working;
  }

  async load(rows: Rows): Promise<void> {
    await this.#readAll(rows);
    this.#answer(rows);
    rows.watch(this.#shape.table, () => void this.adopt());
    if (this.#known.changes().length > 0) this.changed();
    await this.#working;
  }

  /** Something was changed here: it is written as soon as what came before is. */
  changed(): void {
    this.#known.changed();
    this.#keeping.begin();
    this.#working = this.#working.then(() => this.#flush());
  }

  /**
   * Rows that must be written though nothing shown here has changed, such as what has to be asked; or with
   * what was changed here, as long as that `holds`.
   */
  ask(rows: readonly Change[], holds = always): void {
    if (rows.length === 0) return;
    this.#beside = [...this.#beside, ...rows.map((change) => ({ change, holds }))];
    this.changed();
  }

  #asked(): readonly Beside[] {
    this.#beside = this.#beside.filter(({ holds }) => holds());
    return this.#beside;
  }

  /** Another window may have written: what it wrote is shown here. */
  adopt(): Promise<void> {
    this.#working = this.#working.then(async () => {
      try {
        const rows = await this.#opened;
        await this.#readAll(rows);
      } catch {
        return; // the store was closed meanwhile: what is here stays
      }
      if (this.#known.changes().length > 0) this.changed();
    });
    return this.#working;
  }

  async #flush(): Promise<void> {
    try {
      const rows = await this.#opened;
      await this.#shape.ready?.();
      let isWritten = false;
      for (let round = 0; round < ROUNDS && !isWritten; round++) {
        await this.#known.writeAhead();
        isWritten = await this.#wrote(rows);
      }
      if (isWritten) this.#keeping.done(this, rows.kind);
      else this.#later();
    } catch (error) {
      this.#keeping.refused(this, error instanceof StoreError ? error.trouble : 'failed');
    }
  }

  /** One round: says whether all is written, or else takes in what another window wrote first. */
  async #wrote(rows: Rows): Promise<boolean> {
    const writing = this.#known.writing();
    const asked = this.#asked();
    const all = [...writing.own, ...asked.map(({ change }) => change), ...writing.bin];
    if (all.length === 0) return true;
    this.#underWay = writing;
    const written = await rows.write(all).finally(() => (this.#underWay = undefined));
    if (!written.ok) {
      const { table } = this.#shape;
      this.#meet(written.clashes.filter((clash) => clash.table === table));
      for (const one of written.clashes) if (one.table === 'bin') this.#known.taken(one.id);
      return false;
    }
    // more may have been asked for while this was written
    this.#beside = this.#beside.filter((one) => !asked.includes(one));
    this.#known.written(writing, written.revs);
    return true;
  }

  /** Others were first in every round: that nothing is saved is said, and it is tried anew a little later. */
  #later(): void {
    this.#keeping.refused(this, 'busy');
    clearTimeout(this.#again);
    this.#again = setTimeout(() => this.changed(), AGAIN_MS);
  }

  async #readAll(rows: Rows): Promise<void> {
    const entries = await rows.read(this.#shape.table);
    if (entries.length > 0) await this.#shape.ready?.();
    this.#meet(this.#known.unlike(entries));
    this.#shape.wasRead?.();
  }

  /** Entries stand otherwise in the store than was known here: they are shown in one go. */
  #meet(entries: readonly { id: string; entry: Entry | undefined }[]): void {
    if (entries.length === 0) return;
    takeTyped(true); // else it would be typed over what comes now, unseen
    const shown = new Map<string, T | undefined>(this.#shape.shown());
    const all = new Map<string, T | undefined>();
    for (const { id, entry } of entries) {
      const { settled, beside } = this.#known.met(id, entry, shown.get(id));
      this.#beside = [...this.#beside, ...beside.map((change) => ({ change, holds: always }))];
      for (const [of, value] of settled) {
        shown.set(of, value);
        all.set(of, value);
      }
    }
    this.#shape.settle(all);
  }
}
