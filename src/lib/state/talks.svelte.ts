/** Talks of one's own: kept in the store as the texts of their files, with every change undone in turn. */
import type { Talk } from '../lecture/talk.ts';
import { parseTalkText, talkText } from '../lecture/talkFile.ts';
import type { Store } from '../store/store.ts';
import { History } from './history.svelte.ts';

export interface OwnTalk {
  id: string;
  talk: Talk;
}

export type TalkDid = 'added' | 'changed' | 'removed';

type TalkStore = Pick<Store, 'talks' | 'putTalk' | 'removeTalk' | 'watchTalks'>;

export class Talks {
  #entries = $state.raw<readonly OwnTalk[]>([]);
  /** Ids of stored rows that are not understood: left as they are. */
  damaged = $state.raw<readonly string[]>([]);
  /** Whether the store has been read: before that a talk may only seem to be missing. */
  ready = $state(false);
  /** Whether the last write was refused. */
  refusedWrite = $state(false);
  told = $state.raw<{ did: TalkDid; undone: boolean } | undefined>(undefined);
  readonly history = new History<readonly OwnTalk[], TalkDid>();
  #store: TalkStore | undefined;
  #writing: Promise<void> = Promise.resolve();

  get entries(): readonly OwnTalk[] {
    return this.#entries;
  }

  /** Settles when all that was changed is written. */
  get written(): Promise<void> {
    return this.#writing;
  }

  get(id: string): Talk | undefined {
    return this.#entries.find((entry) => entry.id === id)?.talk;
  }

  /** Takes what the store holds. */
  async load(store: TalkStore): Promise<void> {
    this.#store = store;
    await this.#adopt();
    this.ready = true;
    store.watchTalks(() => {
      this.#adopt().catch(() => undefined); // the store was closed meanwhile: what is here stays
    });
  }

  /** Keeps a talk under a new id, and says which. */
  add(talk: Talk): string {
    const id = `talk-${crypto.randomUUID()}`;
    this.#become([...this.#entries, { id, talk }], 'added');
    return id;
  }

  /** Puts a talk in place of the one with its id. */
  change(id: string, talk: Talk): void {
    this.#become(
      this.#entries.map((entry) => (entry.id === id ? { id, talk } : entry)),
      'changed',
    );
  }

  remove(id: string): void {
    this.#become(
      this.#entries.filter((entry) => entry.id !== id),
      'removed',
    );
  }

  undo(): void {
    const step = this.history.undo();
    if (!step) return;
    this.#write(step.value);
    this.told = { did: step.did, undone: true };
  }

  redo(): void {
    const step = this.history.redo();
    if (!step) return;
    this.#write(step.value);
    this.told = { did: step.did, undone: false };
  }

  hush(): void {
    this.told = undefined;
  }

  #become(next: readonly OwnTalk[], did: TalkDid): void {
    this.history.record(this.#entries, next, did);
    this.#write(next);
    this.told = { did, undone: false };
  }

  /** Shows a state and writes what differs from the one before. */
  #write(next: readonly OwnTalk[]): void {
    const before = this.#entries;
    this.#entries = next;
    const changed = next.filter((entry) => !before.includes(entry));
    const gone = before.filter((old) => !next.some(({ id }) => id === old.id));
    this.#writing = this.#writing.then(async () => {
      try {
        for (const { id, talk } of changed)
          await this.#store?.putTalk({ id, text: talkText(talk) });
        for (const { id } of gone) await this.#store?.removeTalk(id);
        this.refusedWrite = false;
      } catch {
        this.refusedWrite = true;
      }
    });
  }

  /** Reads the store anew; a change made by another page replaces what is here, and ends undo. */
  async #adopt(): Promise<void> {
    const store = this.#store;
    if (!store) return;
    await this.#writing;
    const seen = this.#entries;
    const rows = await store.talks();
    if (seen !== this.#entries) return; // changed here meanwhile: the write that follows calls again
    const read = rows.map(({ id, text }) => ({ id, parsed: parseTalkText(text) }));
    this.damaged = read.filter(({ parsed }) => !parsed.ok).map(({ id }) => id);
    const sound = read.flatMap(({ id, parsed }) => (parsed.ok ? [{ id, talk: parsed.talk }] : []));
    const textOf = (id: string): string | undefined =>
      seen.filter((entry) => entry.id === id).map(({ talk }) => talkText(talk))[0];
    const same =
      sound.length === seen.length && sound.every(({ id, talk }) => textOf(id) === talkText(talk));
    if (same) return;
    this.history.forget();
    this.#entries = sound;
  }
}
