/** Small sets and maps that are replaced whole, never changed in place. */

export const NONE: ReadonlySet<string> = new Set();

/** The set with an id put in, or taken out when it was there. */
export function toggled(set: ReadonlySet<string>, id: string): ReadonlySet<string> {
  const next = new Set(set);
  if (!next.delete(id)) next.add(id);
  return next;
}

/** Each value once, in the order first met. */
export const once = (values: readonly string[]): string[] => [...new Set(values)];

/** A value for each key. */
export const mapOf = <T>(keys: Iterable<string>, of: (key: string) => T): ReadonlyMap<string, T> =>
  new Map([...keys].map((key) => [key, of(key)]));

/** Each value under what it is found by; of two under one key, the last. */
export const indexOf = <K, T>(values: Iterable<T>, by: (value: T) => K): ReadonlyMap<K, T> =>
  new Map([...values].map((value) => [by(value), value]));
