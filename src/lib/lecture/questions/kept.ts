/** Answers worked out once: a set asks the same of the same atlas hundreds of times. */

const all = new WeakMap<object, Map<string, unknown>>();

/** What `make` gives, made once for an owner and a key. The owner and what it is made from never change. */
export function kept<T>(owner: object, key: string, make: () => T): T {
  const own = all.get(owner) ?? new Map<string, unknown>();
  all.set(owner, own);
  if (!own.has(key)) own.set(key, make());
  return own.get(key) as T;
}
