/** Copies of children: the same visit is never in two of them. */
import type { Case } from '../case/case.ts';
import { renamed } from '../case/renamed.ts';
import type { Kept } from '../store/store.ts';
import { newPartId } from '../platform/ids.ts';

const idsOf = ({ visits, decisions }: Case): string[] => [
  ...visits.map(({ id }) => id),
  ...decisions.map(({ id }) => id),
];

/**
 * Records as they are taken in among those here. One that has a visit or a decision of another child is a
 * copy of it, as a file that is opened twice: all in it gets new ids.
 */
export function withOwnIds(records: readonly Kept[], shelf: readonly Kept[]): Kept[] {
  const owners = new Map(shelf.flatMap(({ id, record }) => idsOf(record).map((of) => [of, id])));
  return records.map((kept): Kept => {
    const { id, record } = kept;
    const isCopy = idsOf(record).some((of) => (owners.get(of) ?? id) !== id);
    const own = isCopy
      ? { id, record: renamed(record, new Map(idsOf(record).map((of) => [of, newPartId()]))) }
      : kept;
    for (const of of idsOf(own.record)) owners.set(of, id);
    return own;
  });
}
