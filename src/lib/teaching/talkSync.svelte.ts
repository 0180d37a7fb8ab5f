/**
 * The stage and the speaker's window in step: each tells the other where the talk stands, over a
 * channel of the browser's own. A talk whose window was closed goes on where it stood.
 */
import * as v from 'valibot';
import type { Shelf } from '../platform/persisted.svelte.ts';

/** Where a talk stands. */
export interface Standing {
  talk: string;
  /** Counted from 0. */
  step: number;
  black: boolean;
  /** When it was begun, ms since 1970. */
  begunAt: number;
}

const standing = v.object({
  talk: v.string(),
  step: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1000)),
  black: v.boolean(),
  begunAt: v.number(),
});

/** What is said over the channel: where the talk stands, or the question where it does. */
const message = v.variant('kind', [
  v.object({ kind: v.literal('at'), at: standing, from: v.picklist(['stage', 'speaker']) }),
  v.object({ kind: v.literal('ask') }),
]);

const CHANNEL = 'tidemark-stage';
const KEY = 'tidemark-stage';

/** Where the last talk stood, if it was not left; read as hostile. */
export function lastStanding(shelf: Shelf | undefined): Standing | undefined {
  try {
    const kept = v.safeParse(standing, JSON.parse(shelf?.getItem(KEY) ?? 'null'));
    return kept.success ? kept.output : undefined;
  } catch {
    return undefined;
  }
}

/** Remembers where a talk stands; undefined forgets it. */
export function keepStanding(shelf: Shelf | undefined, at: Standing | undefined): void {
  try {
    shelf?.setItem(KEY, JSON.stringify(at ?? null));
  } catch {
    // a full or denied storage only means that the talk begins anew
  }
}

export class TalkSync {
  readonly #channel: BroadcastChannel | undefined;
  readonly #as: 'stage' | 'speaker';
  /** Whether the other window was heard. */
  heard = $state(false);

  /** @param follow what to do when the other window says where the talk stands */
  constructor(as: 'stage' | 'speaker', follow: (at: Standing) => void, now: () => Standing) {
    this.#as = as;
    this.#channel =
      typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(CHANNEL);
    if (!this.#channel) return;
    this.#channel.onmessage = ({ data }) => {
      const read = v.safeParse(message, data);
      if (!read.success) return;
      if (read.output.kind === 'ask') {
        if (as === 'stage') this.tell(now());
        return;
      }
      if (read.output.from === as) return;
      this.heard = true;
      follow(read.output.at);
    };
  }

  tell(at: Standing): void {
    this.#channel?.postMessage({ kind: 'at', at: { ...at }, from: this.#as });
  }

  /** Asks the stage where the talk stands. */
  ask(): void {
    this.#channel?.postMessage({ kind: 'ask' });
  }

  close(): void {
    this.#channel?.close();
  }
}
