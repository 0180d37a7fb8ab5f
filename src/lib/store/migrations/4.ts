/**
 * Every row gets a `rev`, and its text becomes the `body` that a codec makes and reads; tables for what
 * was removed, for what clashed between two windows, and for bookkeeping.
 */
import { newRev } from '../rows.ts';
import type { Migration } from '../versions.ts';

export const to4: Migration = {
  version: 4,
  stores: { cases: 'id', own: 'id', talks: 'id', bin: 'id', clashes: 'id', small: 'id' },
  upgrade: async (transaction) => {
    for (const name of ['cases', 'own', 'talks']) {
      const table = transaction.table<Record<string, unknown>, string>(name);
      const rows = await table.toArray();
      // whatever stood in `text` goes over as it is: what cannot be read stays so, and stays
      await table.bulkPut(rows.map(({ id, text }) => ({ id, rev: newRev(), body: text })));
    }
  },
};
