/** Where children are kept. The one file of this room that others import. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import type { Problem } from '../case/problem.ts';
import { memoryStore } from './memory.ts';
import type { OwnRow } from './own.ts';

/** A child's record with the name it is kept under. */
export interface Kept {
  id: string;
  record: Case;
}

/** A talk of one's own: the text of its file, whatever its version. */
export interface TalkRow {
  id: string;
  text: string;
}

/** A stored record that could not be read: it is left as it is. */
export interface Unread {
  id: string;
  problems: readonly Problem[];
}

export interface Store {
  /** `kept`: in the browser's database. `memory`: gone with the page, since storage was denied. */
  readonly kind: 'kept' | 'memory';
  /** Every record, each through the parser. */
  all(): Promise<{ kept: Kept[]; unread: Unread[] }>;
  /** Keeps a record; rejects when there is no room left. */
  put(kept: Kept): Promise<void>;
  remove(id: string): Promise<void>;
  /** Calls back when another page has changed the store. */
  watch(changed: () => void): void;
  /** Every source and reflex of one's own, as stored text. */
  own(): Promise<OwnRow[]>;
  putOwn(row: OwnRow): Promise<void>;
  removeOwn(id: string): Promise<void>;
  /** Calls back when another page has changed what is one's own. */
  watchOwn(changed: () => void): void;
  /** Every talk of one's own, as stored text. */
  talks(): Promise<TalkRow[]>;
  putTalk(row: TalkRow): Promise<void>;
  removeTalk(id: string): Promise<void>;
  /** Calls back when another page has changed the talks. */
  watchTalks(changed: () => void): void;
  close(): void;
}

export interface OpenOptions {
  atlas: Atlas;
  /** What a store holds when it is first made. */
  seed: readonly Kept[];
  /** The database's name; the usual one unless a test gives its own. */
  name?: string;
}

/**
 * Opens the browser's database, loaded only now so that the first view stays small. Where storage is
 * denied (or was made by a newer Tidemark) a store in memory takes its place.
 */
export async function openStore({ atlas, seed, name }: OpenOptions): Promise<Store> {
  try {
    const { openDatabase } = await import('./database.ts');
    return await openDatabase(atlas, seed, name);
  } catch {
    return memoryStore(seed);
  }
}
