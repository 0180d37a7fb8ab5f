/** Talks of one's own: kept in the store as the texts of their files, with every change undone in turn. */
import type { Talk } from '../lecture/talk.ts';
import { parseTalkText, talkText } from '../lecture/talkFile.ts';
import type { Rows } from '../store/rows.ts';
import { History } from './history.svelte.ts';
import { Keeping } from './keeping.svelte.ts';
import { goneFromTalk } from './parts.ts';
import { byId, settled, stepped } from './shelved.ts';
import { Sync } from './sync.ts';

export interface OwnTalk {
  id: string;
  talk: Talk;
}

export type TalkDid = 'added' | 'changed' | 'removed' | 'brought-back';

const talkId = (): string => `talk-${crypto.randomUUID()}`;

export class Talks {
  #entries = $state.raw<readonly OwnTalk[]>([]);
  /** Ids of stored rows that are not understood: left as they are. */
  damaged = $state.raw<readonly string[]>([]);
  /** Whether the store has been read: before that a talk may only seem to be missing. */
  ready = $state(false);
  told = $state.raw<{ did: TalkDid; undone: boolean } | undefined>(undefined);
  readonly history = new History<readonly OwnTalk[], TalkDid>();
  readonly #keeping: Keeping;
  readonly #sync: Sync<OwnTalk>;

  constructor(keeping = new Keeping()) {
    this.#keeping = keeping;
    this.#sync = new Sync<OwnTalk>(
      {
        table: 'talks',
        write: ({ talk }) => talkText(talk),
        read: (id, text) => {
          const parsed = parseTalkText(text);
          return parsed.ok ? { id, talk: parsed.talk } : undefined;
        },
        // of two changes to one talk neither is lost: the one made here becomes a talk of its own
        merge: ({ mine, theirs }) => {
          if (!mine || !theirs) return { value: mine ?? theirs };
          const id = talkId();
          return { value: theirs, also: { id, value: { ...mine, id } } };
        },
        gone: (before, after) => goneFromTalk(before.talk, after.talk),
        shown: () => byId(this.#entries),
        settle: (entries) => (this.#entries = settled(this.#entries, entries)),
        wasRead: () => (this.damaged = this.#sync.unread),
      },
      keeping,
    );
  }

  get entries(): readonly OwnTalk[] {
    return this.#entries;
  }

  /** Settles when all that was changed is written, or was refused. */
  get written(): Promise<void> {
    return this.#sync.written;
  }

  /** What goes into a backup, and how much of it is new since the last. */
  get backed(): Pick<Sync<OwnTalk>, 'texts' | 'look' | 'changedSince'> {
    return this.#sync;
  }

  /** Whether the last write was refused. */
  get refusedWrite(): boolean {
    return this.#keeping.troubleOf(this.#sync) !== undefined;
  }

  get(id: string): Talk | undefined {
    return this.#entries.find((entry) => entry.id === id)?.talk;
  }

  /** Takes what the store holds. */
  async load(rows: Rows): Promise<void> {
    await this.#sync.load(rows);
    this.ready = true;
  }

  /** Keeps a talk under a new id, and says which. */
  add(talk: Talk): string {
    const id = talkId();
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

  /** Takes entries in beside or in place of those here, as one change. */
  takeIn(entries: readonly OwnTalk[], stroke?: number): void {
    if (entries.length > 0)
      this.#become(settled(this.#entries, byId(entries)), 'brought-back', stroke);
  }

  undo(): void {
    const step = this.history.undo();
    if (!step) return;
    this.#write(stepped(step, this.#entries));
    this.told = { did: step.did, undone: true };
  }

  redo(): void {
    const step = this.history.redo();
    if (!step) return;
    this.#write(stepped(step, this.#entries));
    this.told = { did: step.did, undone: false };
  }

  hush(): void {
    this.told = undefined;
  }

  #become(next: readonly OwnTalk[], did: TalkDid, stroke?: number): void {
    if (this.#keeping.kind === 'newer') return;
    this.history.record(this.#entries, next, did, stroke);
    this.#write(next);
    this.told = { did, undone: false };
  }

  /** Shows a state; what differs from the store is written. */
  #write(next: readonly OwnTalk[]): void {
    this.#entries = next;
    this.#sync.changed();
  }
}
