/** What lies beside the records: what was removed, for thirty days, and what two windows did otherwise. */
import * as v from 'valibot';
import type { Point } from '../case/merge.ts';
import { ANY, type Entry, type Rows } from '../store/rows.ts';
import { BACKUP_TABLES } from '../store/names.ts';
import { binRow } from './trashRow.ts';
import { PART_KINDS } from './partRows.ts';

export const BIN_DAYS = 30;
const DAY_MS = 86_400_000;

/** What may lie in the bin: a whole entry of a table, or a part of one. */
const BINNED = [...BACKUP_TABLES, ...PART_KINDS] as const;
export type BinKind = (typeof BINNED)[number];

/** Something in the bin. */
export interface Binned {
  table: BinKind;
  /** The entry, or the one that the part was taken out of. */
  id: string;
  text: string;
  /** Its row in the bin. */
  row: string;
  /** When it was removed, and when it goes for good, ms since 1970. */
  at: number;
  until: number;
}

/** Points of one child on which two windows differ. */
export interface Clashed {
  row: string;
  child: string;
  points: readonly Point[];
  at: number;
}

const binShape = v.object({ table: v.picklist(BINNED), id: v.string(), text: v.string() });
const pointShape = v.object({
  path: v.pipe(v.array(v.string()), v.minLength(1)),
  visit: v.optional(v.object({ on: v.string(), examiner: v.string() })),
  base: v.optional(v.unknown()),
  mine: v.optional(v.unknown()),
  theirs: v.optional(v.unknown()),
});
const clashShape = v.object({ child: v.string(), points: v.array(pointShape) });

function parsed<T>(shape: v.GenericSchema<unknown, T>, text: string): T | undefined {
  try {
    const read = v.safeParse(shape, JSON.parse(text));
    return read.success ? read.output : undefined;
  } catch {
    return undefined;
  }
}

const binnedOf = ({ id, changedAt = 0, text }: Entry): Binned | undefined => {
  const item = parsed(binShape, text);
  return item && { ...item, row: id, at: changedAt, until: changedAt + BIN_DAYS * DAY_MS };
};

const clashedOf = ({ id, changedAt = 0, text }: Entry): Clashed | undefined => {
  const clash = parsed(clashShape, text);
  if (!clash) return undefined;
  const points = clash.points.map(({ path, visit, base, mine, theirs }): Point => ({
    path,
    visit,
    base,
    mine,
    theirs,
  }));
  return { row: id, child: clash.child, points, at: changedAt };
};

export class Aside {
  /** What was removed last stands first. */
  bin = $state.raw<readonly Binned[]>([]);
  clashes = $state.raw<readonly Clashed[]>([]);
  #rows: Rows | undefined;

  /** Reads both, and takes out of the bin what has lain there its thirty days. */
  async load(rows: Rows, now: number): Promise<void> {
    this.#rows = rows;
    await this.#adopt();
    const over = this.bin.filter(({ until }) => until <= now);
    if (rows.kind !== 'newer') await this.forGood(over.map(({ row }) => row));
    rows.watch('bin', () => void this.#adopt());
    rows.watch('clashes', () => void this.#adopt());
  }

  /** Puts something into the bin that no table holds; answers with its row, undefined where nothing is kept. */
  async put(item: Pick<Binned, 'table' | 'id' | 'text'>): Promise<string | undefined> {
    const row = binRow(item);
    try {
      await this.#rows?.write([row]);
    } catch {
      return undefined; // undo brings it back all the same
    }
    await this.#adopt();
    return row.id;
  }

  /** Reads both again, at once. */
  async look(): Promise<void> {
    await this.#adopt();
  }

  /** Takes rows out of the bin: what was in them is gone. */
  async forGood(rows: readonly string[]): Promise<void> {
    await this.#remove('bin', rows);
  }

  /** A clash was decided. */
  async decided(row: string): Promise<void> {
    await this.#remove('clashes', [row]);
  }

  async #remove(table: 'bin' | 'clashes', rows: readonly string[]): Promise<void> {
    if (rows.length === 0) return;
    await this.#rows?.write(rows.map((id) => ({ table, id, base: ANY, text: undefined })));
    await this.#adopt();
  }

  async #adopt(): Promise<void> {
    const rows = this.#rows;
    if (!rows) return;
    try {
      const [bin, clashes] = [await rows.read('bin'), await rows.read('clashes')];
      this.bin = bin.flatMap((entry) => binnedOf(entry) ?? []).sort((a, b) => b.at - a.at);
      this.clashes = clashes.flatMap((entry) => clashedOf(entry) ?? []);
    } catch {
      // the store was closed meanwhile: what is here stays
    }
  }
}
