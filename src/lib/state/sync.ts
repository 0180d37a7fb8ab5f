/**
 * One table of the store in step with what a page shows. Told of every change, it writes what differs
 * from the store, all of it in one transaction and only over what it has seen; what another window
 * wrote meanwhile is brought together with what was done here, so that neither is lost.
 */
import { ANY, newRev, StoreError, type Change, type Entry, type Rows } from '../store/rows.ts';
import { slices } from '../store/slices.ts';
import { caughtUp } from './caughtUp.ts';
import type { Keeping } from './keeping.svelte.ts';
import { PartRows, type PartRow } from './partRows.ts';
import type { Shape } from './shape.ts';
import { takeTyped } from './typedIn.svelte.ts';
import type { Left } from './unwritten.ts';

/** An entry as the store has it. */
interface Base<T> {
  rev: string;
  /** When it was written last, ms since 1970; undefined where that is not known. */
  changedAt: number | undefined;
  text: string;
  /** Undefined where it is not understood. */
  value: T | undefined;
}

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
  readonly #base = new Map<string, Base<T>>();
  #beside: readonly Beside[] = [];
  /** What was shown last of entries that are not written yet: should they go first, this goes into the bin. */
  readonly #last = new Map<string, T>();
  /** Removed in another window and changed here: it stays, and so does in the bin what they had. */
  readonly #kept = new Set<string>();
  /** Rows of the bin that are taken by what another window removed: what goes here lies beside it. */
  readonly #apart = new Set<string>();
  /** Texts made ahead of what waits to be written. */
  readonly #texts = new WeakMap<T, string>();
  readonly #parts = new PartRows();
  readonly #opened: Promise<Rows>;
  #answer: (rows: Rows) => void = () => undefined;
  #working: Promise<void> = Promise.resolve();
  /** Another attempt after too many rounds. */
  #again: ReturnType<typeof setTimeout> | undefined;

  constructor(shape: Shape<T>, keeping: Keeping) {
    this.#shape = shape;
    this.#keeping = keeping;
    this.#opened = new Promise((resolve) => (this.#answer = resolve));
    keeping.add(() => this.changed());
  }

  /** Entries as a store is expected to hold them, before it has answered. */
  expect(values: ReadonlyMap<string, T>): void {
    for (const [id, value] of values)
      this.#base.set(id, { rev: '', changedAt: undefined, text: this.#shape.write(value), value });
  }

  /** Ids of stored entries that are not understood. */
  get unread(): string[] {
    return [...this.#base].filter(([, { value }]) => value === undefined).map(([id]) => id);
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
    const unread = new Map(this.unread.map((id) => [id, this.#base.get(id)?.text ?? '']));
    return {
      get: (id) => {
        const value = shown.get(id);
        return value === undefined ? unread.get(id) : this.#shape.write(value);
      },
    };
  }

  /** Ids of what was written after a moment, ms since 1970, or is not written yet. */
  changedSince(at: number): string[] {
    return [...this.#shape.shown()].flatMap(([id, value]) => {
      const base = this.#base.get(id);
      const isNew = base?.value !== value || (base.changedAt ?? 0) > at;
      return isNew ? [id] : [];
    });
  }

  /** What differs from the store by now, with what it was known to hold, and what is written with it. */
  unwritten(): Left {
    return {
      entries: this.#changes().map(({ id, text }) => ({
        id,
        base: this.#base.get(id)?.text,
        text,
      })),
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
    if (this.#changes().length > 0) this.changed();
    await this.#working;
  }

  /** Something was changed here: it is written as soon as what came before is. */
  changed(): void {
    for (const [id, value] of this.#shape.shown())
      if (this.#base.get(id)?.value !== value) this.#last.set(id, value);
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
      if (this.#changes().length > 0) this.changed();
    });
    return this.#working;
  }

  async #flush(): Promise<void> {
    try {
      const rows = await this.#opened;
      await this.#shape.ready?.();
      let isWritten = false;
      for (let round = 0; round < ROUNDS && !isWritten; round++) {
        await this.#writeAhead();
        const shown = this.#shape.shown();
        const own = this.#changes();
        const asked = this.#asked();
        const unseen = [...this.#last.keys()].filter((id) => !shown.has(id) && !this.#base.has(id));
        const parts = own.flatMap(({ id }) => this.#partsOf(id, shown.get(id)));
        const all = [
          ...own,
          ...asked.map(({ change }) => change),
          ...own.flatMap((change) => this.#aside(change)),
          ...unseen.map((id) => this.#binned(id)),
          ...parts.map(({ change }) => change),
        ];
        isWritten = all.length === 0;
        if (isWritten) break;
        const last = new Map(this.#last);
        const written = await rows.write(all);
        if (!written.ok) {
          const { table } = this.#shape;
          const clashes = written.clashes.filter((clash) => clash.table === table);
          this.#meet(clashes);
          for (const one of written.clashes) if (one.table === 'bin') this.#apart.add(one.id);
          continue;
        }
        // more may have been asked for while this was written
        this.#beside = this.#beside.filter((one) => !asked.includes(one));
        this.#apart.clear();
        this.#parts.written(parts);
        // what was written is as new as anything shown before it, also where it was brought together
        for (const id of [...unseen, ...own.map((change) => change.id)])
          if (this.#last.get(id) === last.get(id)) this.#last.delete(id);
        own.forEach(({ id, text }, i) => {
          const rev = written.revs[i];
          this.#kept.delete(id);
          if (text === undefined || rev === undefined) this.#base.delete(id);
          else this.#base.set(id, { rev, changedAt: Date.now(), text, value: shown.get(id) });
        });
        isWritten = true;
      }
      if (isWritten) this.#keeping.done(this, rows.kind);
      else this.#later();
    } catch (error) {
      this.#keeping.refused(this, error instanceof StoreError ? error.trouble : 'failed');
    }
  }

  /** Others were first in every round: that nothing is saved is said, and it is tried anew a little later. */
  #later(): void {
    this.#keeping.refused(this, 'busy');
    clearTimeout(this.#again);
    this.#again = setTimeout(() => this.changed(), AGAIN_MS);
  }

  /** Makes the texts of what differs from the store, of which there may be very many, in slices. */
  async #writeAhead(): Promise<void> {
    const pause = slices();
    for (const [id, value] of this.#shape.shown()) {
      if (this.#base.get(id)?.value === value || this.#texts.has(value)) continue;
      this.#texts.set(value, this.#shape.write(value));
      const rest = pause();
      if (rest) await rest;
    }
  }

  /** What differs from the store. What is not understood there is left alone. */
  #changes(): Change[] {
    const { table, write } = this.#shape;
    const shown = this.#shape.shown();
    const changes: Change[] = [];
    for (const [id, value] of shown) {
      const base = this.#base.get(id);
      if (base?.value === value) continue;
      const text = this.#texts.get(value) ?? write(value);
      if (base?.text === text) this.#base.set(id, { ...base, value });
      else changes.push({ table, id, base: base?.rev, text });
    }
    for (const [id, { rev, value }] of this.#base)
      if (value !== undefined && !shown.has(id))
        changes.push({ table, id, base: rev, text: undefined });
    return changes;
  }

  /** What goes is put into the bin with the same stroke; what comes back is taken out of it. */
  #aside({ table, id, base, text }: Change): Change[] {
    if (text === undefined) return [this.#binned(id)];
    const bin = { table: 'bin', id: `${table} ${id}`, base: ANY } as const;
    return base === undefined && !this.#kept.has(id) ? [{ ...bin, text: undefined }] : [];
  }

  /** Parts of an entry that go into the bin with a change to it, or come back out of it. */
  #partsOf(id: string, after: T | undefined): PartRow[] {
    const before = this.#base.get(id)?.value;
    const { gone } = this.#shape;
    if (!gone || before === undefined || after === undefined) return [];
    return this.#parts.rowsFor(id, gone(before, after, id), gone(after, before, id));
  }

  /** An entry as a row of the bin, as it was shown last. */
  #binned(id: string): Change {
    const { table, write } = this.#shape;
    const last = this.#last.get(id);
    const text = last === undefined ? this.#base.get(id)?.text : write(last);
    const row = `${table} ${id}`;
    return {
      table: 'bin',
      id: this.#apart.has(row) ? `${row} ${newRev()}` : row,
      base: undefined,
      text: JSON.stringify({ table, id, text }),
    };
  }

  async #readAll(rows: Rows): Promise<void> {
    const entries = await rows.read(this.#shape.table);
    if (entries.length > 0) await this.#shape.ready?.();
    const there = new Map(entries.map((entry) => [entry.id, entry]));
    const ids = [...new Set([...there.keys(), ...this.#base.keys()])];
    this.#meet(
      ids
        .filter((id) => there.get(id)?.rev !== this.#base.get(id)?.rev)
        .map((id) => ({ id, entry: there.get(id) })),
    );
    this.#shape.wasRead?.();
  }

  /** Entries stand otherwise in the store than was known here: they are shown in one go. */
  #meet(entries: readonly { id: string; entry: Entry | undefined }[]): void {
    if (entries.length === 0) return;
    takeTyped(true); // else it would be typed over what comes now, unseen
    const shown = new Map<string, T | undefined>(this.#shape.shown());
    const settled = new Map<string, T | undefined>();
    for (const { id, entry } of entries)
      for (const [of, value] of this.#met(id, entry, shown.get(id))) {
        shown.set(of, value);
        settled.set(of, value);
      }
    this.#shape.settle(settled);
  }

  /** An entry stands otherwise in the store than was known here; the answer is what is to be shown. */
  #met(
    id: string,
    entry: Entry | undefined,
    mine: T | undefined,
  ): (readonly [string, T | undefined])[] {
    const { read, merge, write } = this.#shape;
    const base = this.#base.get(id);
    const isSame = entry !== undefined && base?.text === entry.text;
    const theirs = isSame ? base.value : entry && read(id, entry.text);
    if (entry) this.#base.set(id, { ...entry, value: theirs });
    else this.#base.delete(id);
    if (isSame) return [];
    const isChangedHere =
      mine !== base?.value &&
      (mine === undefined || base === undefined || write(mine) !== base.text);
    if (!isChangedHere) {
      if (theirs !== undefined) this.#last.delete(id);
      return [[id, theirs]];
    }
    if (mine !== undefined && write(mine) === entry?.text) return []; // the same was done in both
    // what was done here just before it was removed here is not lost with a removal that does not hold
    const here = mine ?? (theirs === undefined ? undefined : this.#last.get(id));
    if (entry === undefined && mine !== undefined) this.#kept.add(id);
    const { value, beside = [], also } = merge({ id, base: base?.value, mine: here, theirs });
    this.#beside = [...this.#beside, ...beside.map((change) => ({ change, holds: always }))];
    // what was brought together holds what was shown before: should it go later, it goes whole
    if (value !== undefined && value === theirs) this.#last.delete(id);
    else if (value !== undefined) this.#last.set(id, value);
    return [[id, value], ...(also ? [[also.id, also.value] as const] : [])];
  }
}
