/** Lists of entries by id, and parts by name: what has come from elsewhere put in, and a step of undo gone over them. */
import { canonical } from '../case/merge.ts';

export const byId = <T extends { id: string }>(list: readonly T[]): ReadonlyMap<string, T> =>
  new Map(list.map((entry) => [entry.id, entry]));

/** A list with entries put in place of those with their ids, added, or (undefined) taken out. */
export function settled<T extends { id: string }>(
  list: readonly T[],
  values: ReadonlyMap<string, T | undefined>,
): T[] {
  const known = new Set(list.map(({ id }) => id));
  const fresh = [...values].flatMap(([id, value]) => (value && !known.has(id) ? [value] : []));
  return [
    ...list.flatMap((entry) => {
      if (!values.has(entry.id)) return [entry];
      const value = values.get(entry.id);
      return value ? [value] : [];
    }),
    ...fresh,
  ];
}

/**
 * A list after a step from one state to another. What the step is not about stays as it is now, and so
 * does what was changed since, in another window: whether there is such an entry is said.
 */
export function stepped<T extends { id: string }>(
  { from, value }: { from: readonly T[]; value: readonly T[] },
  now: readonly T[],
  isSame: (a: T, b: T) => boolean,
): { list: T[]; stays: boolean } {
  const [was, will, here] = [byId(from), byId(value), byId(now)];
  const isAsItWas = (id: string): boolean => {
    const [a, b] = [was.get(id), here.get(id)];
    return a === b || (a !== undefined && b !== undefined && isSame(a, b));
  };
  const changed = [...new Set([...was.keys(), ...will.keys()])].filter(
    (id) => was.get(id) !== will.get(id),
  );
  const free = changed.filter(isAsItWas);
  const list = settled(now, new Map(free.map((id) => [id, will.get(id)])));
  const order = new Map(value.map(({ id }, index) => [id, index]));
  const place = ({ id }: T): number => order.get(id) ?? value.length;
  return {
    list: list.sort((a, b) => place(a) - place(b)),
    stays: free.length < changed.length,
  };
}

/** Parts by name after a step: only what the step is about changes, and only where it was not changed since. */
export function partsStepped<V>(
  now: Readonly<Record<string, V>>,
  from: Readonly<Record<string, V>>,
  to: Readonly<Record<string, V>>,
): Record<string, V> {
  const isSame = (a: unknown, b: unknown): boolean => canonical(a) === canonical(b);
  const names = new Set([...Object.keys(now), ...Object.keys(to)]);
  const parts = [...names].flatMap((name) => {
    const isStep = !isSame(from[name], to[name]) && isSame(now[name], from[name]);
    const value = isStep ? to[name] : now[name];
    return value === undefined ? [] : [[name, value] as const];
  });
  return Object.fromEntries(parts);
}
