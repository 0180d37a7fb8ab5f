/** Wrong passphrases counted over reloads, and the wait that grows with them. */
import * as v from 'valibot';
import type { Shelf } from '../platform/persisted.svelte.ts';

const KEY = 'tidemark-tries';
/** So many wrong ones are slips of the finger. */
const FREE = 3;
const LONGEST_SECONDS = 300;

const shape = v.object({
  wrong: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1e6)),
  at: v.number(),
});

type Tries = v.InferOutput<typeof shape>;

function read(shelf: Shelf | undefined): Tries {
  try {
    const parsed = v.safeParse(shape, JSON.parse(shelf?.getItem(KEY) ?? 'null'));
    return parsed.success ? parsed.output : { wrong: 0, at: 0 };
  } catch {
    return { wrong: 0, at: 0 };
  }
}

function write(shelf: Shelf | undefined, tries: Tries): void {
  try {
    shelf?.setItem(KEY, JSON.stringify(tries));
  } catch {
    // a denied storage only means that a reload forgets the count
  }
}

/** Seconds to wait after so many wrong ones in a row: none, then 1, 2, 4 and on to five minutes. */
export const waitSeconds = (wrong: number): number =>
  wrong < FREE ? 0 : Math.min(2 ** (wrong - FREE), LONGEST_SECONDS);

/** Seconds left before the next try, rounded up. A clock that was set back makes no wait longer. */
export function secondsLeft(shelf: Shelf | undefined, now: number): number {
  const { wrong, at } = read(shelf);
  const wait = waitSeconds(wrong);
  return Math.min(wait, Math.max(0, Math.ceil(wait - (now - at) / 1000)));
}

export const wasWrong = (shelf: Shelf | undefined, now: number): void =>
  write(shelf, { wrong: read(shelf).wrong + 1, at: now });

export const wasRight = (shelf: Shelf | undefined): void => write(shelf, { wrong: 0, at: 0 });
