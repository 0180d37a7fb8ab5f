/** Rows that last as long as the page: for where storage is denied. */
import { ANY, newRev, type Clash, type Entry, type Rows, type Table } from './rows.ts';

export function memoryRows(seed: readonly { id: string; text: string }[] = []): Rows {
  const tables = new Map<Table, Map<string, Entry>>();
  const watching = new Map<Table, (() => void)[]>();
  const of = (table: Table): Map<string, Entry> => {
    const rows = tables.get(table) ?? new Map<string, Entry>();
    tables.set(table, rows);
    return rows;
  };
  const put = (table: Table, id: string, text: string): string => {
    const rev = newRev();
    of(table).set(id, { id, rev, changedAt: Date.now(), text });
    return rev;
  };
  for (const { id, text } of seed) put('cases', id, text);
  return {
    kind: 'memory',
    read: (table) => Promise.resolve([...of(table).values()]),
    one: ({ table, id }) => Promise.resolve(of(table).get(id)),
    write: (changes) => {
      const clashes = changes
        .filter(({ table, id, base }) => base !== ANY && of(table).get(id)?.rev !== base)
        .map(({ table, id }): Clash => ({ table, id, entry: of(table).get(id) }));
      if (clashes.length > 0) return Promise.resolve({ ok: false, clashes });
      const revs = changes.map(({ table, id, text }) => {
        if (text !== undefined) return put(table, id, text);
        of(table).delete(id);
        return undefined;
      });
      for (const table of new Set(changes.map((change) => change.table)))
        for (const changed of watching.get(table) ?? []) changed();
      return Promise.resolve({ ok: true, revs });
    },
    watch: (table, changed) => {
      watching.set(table, [...(watching.get(table) ?? []), changed]);
    },
    close: () => undefined,
  };
}
