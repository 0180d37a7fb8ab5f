/** What is remembered of servers between visits: addresses, and which versions were seen there. No token. */
import * as v from 'valibot';
import type { Seen } from './fhir/push.ts';
import type { Shelf } from '../platform/persisted.svelte.ts';

const KEY = 'tidemark-server';

const shape = v.object({
  base: v.string(),
  /** By the child's id. */
  seen: v.record(v.string(), v.record(v.string(), v.string())),
});

type Remembered = v.InferOutput<typeof shape>;

function read(shelf: Shelf | undefined): Remembered {
  try {
    const kept = v.safeParse(shape, JSON.parse(shelf?.getItem(KEY) ?? ''));
    return kept.success ? kept.output : { base: '', seen: {} };
  } catch {
    return { base: '', seen: {} };
  }
}

export const lastServer = (shelf: Shelf | undefined): string => read(shelf).base;

/** The versions seen of a child on a server; of another server than the last nothing is known. */
export function seenOf(shelf: Shelf | undefined, base: string, id: string): Seen {
  const kept = read(shelf);
  return kept.base === base && Object.hasOwn(kept.seen, id) ? (kept.seen[id] ?? {}) : {};
}

export function rememberSeen(
  shelf: Shelf | undefined,
  base: string,
  id: string,
  versions: Seen,
): void {
  const kept = read(shelf);
  const seen = kept.base === base ? { ...kept.seen, [id]: versions } : { [id]: versions };
  try {
    shelf?.setItem(KEY, JSON.stringify({ base, seen }));
  } catch {
    // nothing is lost but that the next push asks to fetch first
  }
}
