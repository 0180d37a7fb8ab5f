/**
 * What goes on for a while after its click and cannot be left for the next page to write, such as a file
 * that is read or a passphrase that is stretched. A page that goes in the middle of it leaves word, so that
 * the next one says that nothing of it was done.
 */
import * as v from 'valibot';
import type { unfinished } from '../words/en/trouble.ts';
import { newId } from '../platform/ids.ts';

type Place = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** `writing`: more was to be written than could be left for the next page. */
type UnderwayKind = keyof typeof unfinished;
const KINDS: readonly UnderwayKind[] = ['file', 'examples', 'lock', 'writing'];

const PREFIX = 'tidemark-unfinished-';

const shape = v.array(v.object({ kind: v.picklist(KINDS), lock: v.optional(v.string()) }));
type Mark = v.InferOutput<typeof shape>[number];

export class Underway {
  /** What pages that have gone did not finish. */
  unfinished = $state.raw<readonly UnderwayKind[]>([]);
  readonly #place: () => Place | undefined;
  // eslint-disable-next-line svelte/prefer-svelte-reactivity -- nothing of it is shown
  readonly #now = new Set<Mark>();
  /** Words that came after this page had begun: they lie there until they have been read. */
  // eslint-disable-next-line svelte/prefer-svelte-reactivity -- nothing of it is shown
  readonly #late = new Set<string>();
  /** One for each page. */
  readonly #key = `${PREFIX}${newId()}`;
  /** The `rev` of the lock's row as it was read last: it is another once the lock was changed. */
  #lock: string | undefined;
  #readLock: () => Promise<string | undefined> = () => Promise.resolve(undefined);

  constructor(place: () => Place | undefined) {
    this.#place = place;
  }

  /** Hears what pages that have gone did not finish. */
  async begin(readLock: () => Promise<string | undefined>): Promise<void> {
    this.#readLock = readLock;
    this.#lock = await readLock();
    const place = this.#place();
    const keys = Array.from({ length: place?.length ?? 0 }, (_, at) => place?.key(at) ?? '');
    const marks = keys
      .filter((key) => key.startsWith(PREFIX) && key !== this.#key)
      .flatMap((key) => {
        const found = readMarks(place?.getItem(key));
        place?.removeItem(key);
        return found;
      });
    this.#say(marks);
  }

  /**
   * What another page has put into the browser's small storage: one that is closed in the middle of long
   * work may leave its word only when the next has begun.
   */
  hear(key: string | null, text: string | null): void {
    if (!key?.startsWith(PREFIX) || text === null) return;
    this.#late.add(key);
    this.#say(readMarks(text));
  }

  #say(marks: readonly Mark[]): void {
    const kinds = marks
      .filter(({ kind, lock }) => kind !== 'lock' || lock === this.#lock)
      .map(({ kind }) => kind);
    // eslint-disable-next-line svelte/prefer-svelte-reactivity -- it is gone with this line
    this.unfinished = [...new Set([...this.unfinished, ...kinds])];
  }

  /** Does something that a page may go in the middle of. */
  async during<T>(kind: UnderwayKind, work: () => Promise<T>): Promise<T> {
    const lock = kind === 'lock' ? this.#lock : undefined;
    const mark: Mark = { kind, ...(lock === undefined ? {} : { lock }) };
    this.#now.add(mark);
    try {
      return await work();
    } finally {
      this.#now.delete(mark);
      if (this.#now.size === 0) this.takeBack();
      if (kind === 'lock') this.#lock = await this.#readLock();
    }
  }

  /** The page goes: what is not finished by now is not done by it. */
  leave(also: readonly UnderwayKind[]): void {
    const marks = [...this.#now, ...also.map((kind): Mark => ({ kind }))];
    try {
      if (marks.length > 0) this.#place()?.setItem(this.#key, JSON.stringify(marks));
    } catch {
      // a denied storage keeps no word either
    }
  }

  /** The page goes on after all. */
  takeBack(): void {
    this.#place()?.removeItem(this.#key);
  }

  /** What was not finished has been read. */
  hush(): void {
    this.unfinished = [];
    for (const key of this.#late) this.#place()?.removeItem(key);
    this.#late.clear();
  }
}

function readMarks(text: string | null | undefined): readonly Mark[] {
  try {
    const read = v.safeParse(shape, JSON.parse(text ?? '[]'));
    return read.success ? read.output : [];
  } catch {
    return [];
  }
}
