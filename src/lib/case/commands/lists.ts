/** Lists whose entries are told apart by a name. */

/** The list with an entry in place of the one with its name, else before the one that `before` names, else at the end. */
export function withEntry<T>(
  list: readonly T[],
  entry: T,
  nameOf: (one: T) => string,
  before: string | undefined,
): T[] {
  const name = nameOf(entry);
  if (list.some((one) => nameOf(one) === name))
    return list.map((one) => (nameOf(one) === name ? entry : one));
  const at = list.findIndex((one) => nameOf(one) === before);
  return list.toSpliced(at < 0 ? list.length : at, 0, entry);
}

export const withoutEntry = <T>(
  list: readonly T[],
  name: string,
  nameOf: (one: T) => string,
): T[] => list.filter((one) => nameOf(one) !== name);

/** The entry with a name and the one behind it. */
export function entryAt<T>(
  list: readonly T[],
  name: string,
  nameOf: (one: T) => string,
): { entry: T | undefined; next: T | undefined } {
  const at = list.findIndex((one) => nameOf(one) === name);
  return at < 0 ? { entry: undefined, next: undefined } : { entry: list[at], next: list[at + 1] };
}
