/**
 * The versions of the database, oldest first. A released version is never edited: a change is a new
 * file in `migrations` with its own `stores` (and an upgrade where rows change), and a stored copy of
 * the old one stays among the tests.
 */
import type { Transaction } from 'dexie';
import { to1 } from './migrations/1.ts';
import { to2 } from './migrations/2.ts';
import { to3 } from './migrations/3.ts';
import { to4 } from './migrations/4.ts';
import { to5 } from './migrations/5.ts';

export interface Migration {
  version: number;
  /** Every table there is from now on, with its key. */
  stores: Record<string, string>;
  upgrade?: (transaction: Transaction) => Promise<void>;
}

export const VERSIONS: readonly Migration[] = [to1, to2, to3, to4, to5];

/** The newest version that this Tidemark can write. */
export const LATEST = Math.max(...VERSIONS.map(({ version }) => version));
