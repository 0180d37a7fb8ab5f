/** Something as a row of the bin that no other row stands in the way of. */
import { newRev, type Change } from '../store/rows.ts';

export const binRow = (item: { table: string; id: string; text: string }): Change => ({
  table: 'bin',
  // the name of a row says nothing of what is in it: names are not sealed under a lock
  id: `${item.table} ${newRev()}`,
  base: undefined,
  text: JSON.stringify({ table: item.table, id: item.id, text: item.text }),
});
