/**
 * What was changed and not written yet when its page goes: the store takes a moment that a page which is
 * closed no longer has, the browser's small storage takes none. The next page takes it in.
 */
import * as v from 'valibot';
import { newId } from './ids.ts';

type Place = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const PREFIX = 'tidemark-unwritten-';
/** One for each page, so that two that go together do not take each other's place. */
const KEY = `${PREFIX}${newId()}`;

const shape = v.array(v.object({ id: v.string(), base: v.optional(v.string()), text: v.string() }));

/** An entry as the store was known to have it, and as it was changed. */
export interface Unwritten {
  id: string;
  base?: string | undefined;
  text: string;
}

export function leaveBehind(place: Place | undefined, entries: readonly Unwritten[]): void {
  try {
    if (entries.length > 0) place?.setItem(KEY, JSON.stringify(entries));
  } catch {
    // a full or denied storage only means that the store has to be quick enough
  }
}

/** This page goes on after all, and has written what it had. */
export const takeBack = (place: Place | undefined): void => place?.removeItem(KEY);

/** What pages that have gone left behind. It stays there until `done` is called. */
export function leftBehind(place: Place | undefined): { entries: Unwritten[]; done: () => void } {
  const keys = Array.from({ length: place?.length ?? 0 }, (_, at) => place?.key(at) ?? '').filter(
    (key) => key.startsWith(PREFIX) && key !== KEY,
  );
  const entries = keys.flatMap((key): Unwritten[] => {
    try {
      const read = v.safeParse(shape, JSON.parse(place?.getItem(key) ?? 'null'));
      return read.success ? read.output : [];
    } catch {
      return [];
    }
  });
  return { entries, done: () => keys.forEach((key) => place?.removeItem(key)) };
}
