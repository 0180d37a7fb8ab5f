/** Rows of the bin for what is taken out of an entry that itself stays. */
import { ANY, newRev, type Change } from '../store/rows.ts';

export const PART_KINDS = ['visits', 'findings', 'decisions', 'steps', 'answers'] as const;
type PartKind = (typeof PART_KINDS)[number];

/** Something within an entry that was taken out of it, and can be put back by itself. */
export interface Part {
  kind: PartKind;
  /** Tells it from others of its kind in the entry. */
  key: string;
  text: string;
}

/** A change to the bin, and the part it is about. */
export interface PartRow {
  name: string;
  change: Change;
}

const nameOf = (id: string, { kind, key }: Part): string => JSON.stringify([kind, id, key]);

export class PartRows {
  /** Rows by the part that was put there from here: should it come back, its row goes. */
  readonly #rows = new Map<string, string>();

  rowsFor(id: string, gone: readonly Part[], back: readonly Part[]): PartRow[] {
    return [
      ...gone.map((part): PartRow => ({
        name: nameOf(id, part),
        change: {
          table: 'bin',
          // the name of a row says nothing of what is in it: names are not sealed under a lock
          id: `${part.kind} ${id} ${newRev()}`,
          base: undefined,
          text: JSON.stringify({ table: part.kind, id, text: part.text }),
        },
      })),
      ...back.flatMap((part): PartRow[] => {
        const name = nameOf(id, part);
        const row = this.#rows.get(name);
        if (row === undefined) return [];
        return [{ name, change: { table: 'bin', id: row, base: ANY, text: undefined } }];
      }),
    ];
  }

  /** The changes were written. */
  written(rows: readonly PartRow[]): void {
    for (const { name, change } of rows)
      if (change.text === undefined) this.#rows.delete(name);
      else this.#rows.set(name, change.id);
  }
}
