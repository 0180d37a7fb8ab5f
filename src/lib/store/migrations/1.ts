/** Children, each the text of its case file. */
import type { Migration } from '../versions.ts';

export const to1: Migration = { version: 1, stores: { cases: 'id' } };
