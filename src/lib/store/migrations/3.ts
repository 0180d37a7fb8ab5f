/** Talks of one's own, each the text of its file. */
import type { Migration } from '../versions.ts';

export const to3: Migration = { version: 3, stores: { cases: 'id', own: 'id', talks: 'id' } };
