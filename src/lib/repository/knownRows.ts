/**
 * What the store is known to hold of one table, and in what it differs from what a page shows. Nothing is
 * read or written here: `Sync` does that, and tells what came of it.
 */
import { ANY, newRev, type Change, type Entry } from '../store/rows.ts';
import { slices } from '../store/slices.ts';
import { PartRows, type PartRow } from './partRows.ts';
import type { Shape } from './entryKind.ts';

/** An entry as the store has it. */
interface Base<T> {
  rev: string;
  /** When it was written last, ms since 1970; undefined where that is not known. */
  changedAt: number | undefined;
  text: string;
  /** Undefined where it is not understood. */
  value: T | undefined;
}

/** What is written in one transaction for what differs from the store. */
export interface Writing<T> {
  own: readonly Change[];
  /** Rows of the bin that go with it. */
  bin: readonly Change[];
  /** What was shown, and what was shown last, when this was made. */
  shown: ReadonlyMap<string, T>;
  last: ReadonlyMap<string, T>;
  /** Ids that went before they were ever written. */
  unseen: readonly string[];
  parts: readonly PartRow[];
}

/** What is to be shown after the store was found to hold something else, by id; undefined: it goes. */
interface Met<T> {
  settled: readonly (readonly [string, T | undefined])[];
  /** Rows that must be written with it, such as what has to be asked. */
  beside: readonly Change[];
}

export class Known<T extends object> {
  readonly #shape: Shape<T>;
  readonly #base = new Map<string, Base<T>>();
  /** What was shown last of entries that are not written yet: should they go first, this goes into the bin. */
  readonly #last = new Map<string, T>();
  /** Removed in another window and changed here: it stays, and so does in the bin what they had. */
  readonly #kept = new Set<string>();
  /** Rows of the bin that are taken by what another window removed: what goes here lies beside it. */
  readonly #apart = new Set<string>();
  /** Texts made ahead of what waits to be written. */
  readonly #texts = new WeakMap<T, string>();
  readonly #parts = new PartRows();

  constructor(shape: Shape<T>) {
    this.#shape = shape;
  }

  /** Entries as a store is expected to hold them, before it has answered. */
  expect(values: ReadonlyMap<string, T>): void {
    for (const [id, value] of values)
      this.#base.set(id, { rev: '', changedAt: undefined, text: this.#shape.write(value), value });
  }

  /** Stored texts that are not understood, by id. */
  get unread(): ReadonlyMap<string, string> {
    return new Map(
      [...this.#base].flatMap(([id, { value, text }]) =>
        value === undefined ? [[id, text] as const] : [],
      ),
    );
  }

  /** The text of an entry in the store. */
  textOf(id: string): string | undefined {
    return this.#base.get(id)?.text;
  }

  /** Whether an entry that is shown was written after a moment, ms since 1970, or is not written yet. */
  isNewSince(at: number, id: string, value: T): boolean {
    const base = this.#base.get(id);
    return base?.value !== value || (base.changedAt ?? 0) > at;
  }

  /** Something was changed: what is shown of it by now may have to go into the bin. */
  changed(): void {
    for (const [id, value] of this.#shape.shown())
      if (this.#base.get(id)?.value !== value) this.#last.set(id, value);
  }

  /** Makes the texts of what differs from the store, of which there may be very many, in slices. */
  async writeAhead(): Promise<void> {
    const pause = slices();
    for (const [id, value] of this.#shape.shown()) {
      if (this.#base.get(id)?.value === value || this.#texts.has(value)) continue;
      this.#texts.set(value, this.#shape.write(value));
      const rest = pause();
      if (rest) await rest;
    }
  }

  /** What differs from the store. What is not understood there is left alone. */
  changes(): Change[] {
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

  /** What differs from the store, with the rows of the bin that are written in the same transaction. */
  writing(): Writing<T> {
    const shown = this.#shape.shown();
    const own = this.changes();
    const unseen = [...this.#last.keys()].filter((id) => !shown.has(id) && !this.#base.has(id));
    const parts = own.flatMap(({ id }) => this.#partsOf(id, shown.get(id)));
    const bin = [
      ...own.flatMap((change) => this.#aside(change)),
      ...unseen.map((id) => this.#binned(id)),
      ...parts.map(({ change }) => change),
    ];
    return { own, bin, shown, last: new Map(this.#last), unseen, parts };
  }

  /** It was written. @param revs of `own`, in its order */
  written(
    { own, shown, last, unseen, parts }: Writing<T>,
    revs: readonly (string | undefined)[],
  ): void {
    this.#apart.clear();
    this.#parts.written(parts);
    // what was written is as new as anything shown before it, also where it was brought together
    for (const id of [...unseen, ...own.map((change) => change.id)])
      if (this.#last.get(id) === last.get(id)) this.#last.delete(id);
    own.forEach(({ id, text }, i) => {
      const rev = revs[i];
      this.#kept.delete(id);
      if (text === undefined || rev === undefined) this.#base.delete(id);
      else this.#base.set(id, { rev, changedAt: Date.now(), text, value: shown.get(id) });
    });
  }

  /** A row of the bin is taken: what goes here lies beside it. */
  taken(row: string): void {
    this.#apart.add(row);
  }

  /** Which of the entries read from the store, and of those known before, differ from what was known. */
  unlike(entries: readonly Entry[]): { id: string; entry: Entry | undefined }[] {
    const there = new Map(entries.map((entry) => [entry.id, entry]));
    const ids = [...new Set([...there.keys(), ...this.#base.keys()])];
    return ids
      .filter((id) => there.get(id)?.rev !== this.#base.get(id)?.rev)
      .map((id) => ({ id, entry: there.get(id) }));
  }

  /** An entry stands otherwise in the store than was known here; the answer is what is to be shown. */
  met(id: string, entry: Entry | undefined, mine: T | undefined): Met<T> {
    const { read, merge, write } = this.#shape;
    const base = this.#base.get(id);
    const isSame = entry !== undefined && base?.text === entry.text;
    const theirs = isSame ? base.value : entry && read(id, entry.text);
    if (entry) this.#base.set(id, { ...entry, value: theirs });
    else this.#base.delete(id);
    if (isSame) return { settled: [], beside: [] };
    const isChangedHere =
      mine !== base?.value &&
      (mine === undefined || base === undefined || write(mine) !== base.text);
    if (!isChangedHere) {
      if (theirs !== undefined) this.#last.delete(id);
      return { settled: [[id, theirs]], beside: [] };
    }
    // the same was done in both
    if (mine !== undefined && write(mine) === entry?.text) return { settled: [], beside: [] };
    // what was done here just before it was removed here is not lost with a removal that does not hold
    const here = mine ?? (theirs === undefined ? undefined : this.#last.get(id));
    if (entry === undefined && mine !== undefined) this.#kept.add(id);
    const { value, beside = [], also } = merge({ id, base: base?.value, mine: here, theirs });
    // what was brought together holds what was shown before: should it go later, it goes whole
    if (value !== undefined && value === theirs) this.#last.delete(id);
    else if (value !== undefined) this.#last.set(id, value);
    return { settled: [[id, value], ...(also ? [[also.id, also.value] as const] : [])], beside };
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
}
