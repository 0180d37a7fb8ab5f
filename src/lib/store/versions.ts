/**
 * The versions of the database, oldest first. A released version is never edited: a change is a new
 * entry with its own `stores` (and an upgrade where rows change), and a stored copy of the old one
 * stays among the tests.
 */
export const VERSIONS: readonly { version: number; stores: Record<string, string> }[] = [
  { version: 1, stores: { cases: 'id' } },
  // sources and reflexes of one's own, as text like the cases
  { version: 2, stores: { cases: 'id', own: 'id' } },
  // talks of one's own, each the text of its file
  { version: 3, stores: { cases: 'id', own: 'id', talks: 'id' } },
];
