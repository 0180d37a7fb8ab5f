/** Sources and reflexes of one's own, as text like the cases. */
import type { Migration } from '../versions.ts';

export const to2: Migration = { version: 2, stores: { cases: 'id', own: 'id' } };
