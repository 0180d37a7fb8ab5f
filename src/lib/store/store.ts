/** Where everything is kept. The one file of this room that opens the store for others. */
import type { Case } from '../case/case.ts';
import type { Problem } from '../case/problem.ts';
import type { Opening } from './database.ts';
import { memoryRows } from './memory.ts';
import type { Rows } from './rows.ts';

/** A child's record with the name it is kept under. */
export interface Kept {
  id: string;
  record: Case;
}

/** A stored record that could not be read: it is left as it is. */
export interface Unread {
  id: string;
  problems: readonly Problem[];
}

/**
 * Opens the browser's database, loaded only now so that the first view stays small. Where storage is
 * denied, rows in memory take its place.
 */
export async function openStore(opening: Opening): Promise<Rows> {
  try {
    const { openDatabase } = await import('./database.ts');
    return await openDatabase(opening);
  } catch {
    return memoryRows(opening.seed);
  }
}
