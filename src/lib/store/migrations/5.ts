/**
 * Children as case files of version 2, whose visits and decisions have ids. A row that lies open is
 * rewritten with the ids that follow from it; one that is sealed cannot be read here: it is read with the
 * same ids, and rewritten when it next changes. What is no case file of version 1 stays as it is.
 */
import { latestText } from '../../case/file.ts';
import { newRev, type StoredRow } from '../rows.ts';
import type { Migration } from '../versions.ts';

export const to5: Migration = {
  version: 5,
  stores: { cases: 'id', own: 'id', talks: 'id', bin: 'id', clashes: 'id', small: 'id' },
  upgrade: async (transaction) => {
    const table = transaction.table<StoredRow, string>('cases');
    const rows = await table.toArray();
    await table.bulkPut(
      rows.flatMap((row): StoredRow[] => {
        const body = typeof row.body === 'string' ? latestText(row.body, row.id) : undefined;
        return body === undefined ? [] : [{ ...row, rev: newRev(), body }];
      }),
    );
  },
};
