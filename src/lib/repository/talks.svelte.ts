/** Talks of one's own: kept in the store as the texts of their files, with every change undone in turn. */
import type { Talk } from '../lecture/talk.ts';
import { parseTalkText, talkText } from '../lecture/talkFile.ts';
import type { Change, Rows } from '../store/rows.ts';
import { Keeping } from './saveStatus.svelte.ts';
import { OwnKept } from './keptEntries.svelte.ts';
import { goneFromTalk, Rewordings } from './stepParts.ts';

export interface OwnTalk {
  id: string;
  talk: Talk;
}

/** What was done to a talk beside what is done to every entry. */
type TalkDid = 'added' | 'changed';

const talkId = (): string => `talk-${crypto.randomUUID()}`;

export class Talks extends OwnKept<OwnTalk, TalkDid> {
  /** Whether the store has been read: before that a talk may only seem to be missing. */
  ready = $state(false);

  readonly #rewordings: Rewordings;

  constructor(keeping = new Keeping()) {
    const rewordings = new Rewordings();
    super(
      {
        table: 'talks',
        // at hand from the start: a page that goes leaves what it has not written yet as this text
        write: ({ talk }) => talkText(talk),
        read: (id, text) => {
          const parsed = parseTalkText(text);
          return parsed.ok ? { id, talk: parsed.talk } : undefined;
        },
        gone: (before, after) => goneFromTalk(before.talk, after.talk, rewordings),
      },
      talkId,
      keeping,
    );
    this.#rewordings = rewordings;
  }

  get(id: string): Talk | undefined {
    return this.entries.find((entry) => entry.id === id)?.talk;
  }

  /** Takes what the store holds. */
  override async load(rows: Rows): Promise<void> {
    await super.load(rows);
    this.ready = true;
  }

  /** Keeps a talk under a new id, and says which. */
  add(talk: Talk): string {
    const id = talkId();
    this.become([...this.entries, { id, talk }], 'added');
    return id;
  }

  /** Puts a talk in place of the one with its id. */
  change(id: string, talk: Talk): void {
    this.#follow(id, talk);
    this.become(
      this.entries.map((entry) => (entry.id === id ? { id, talk } : entry)),
      'changed',
    );
  }

  /** Takes entries in beside or in place of those here, as one change. */
  takeIn(entries: readonly OwnTalk[], stroke?: number, beside?: readonly Change[]): boolean {
    for (const { id, talk } of entries) this.#follow(id, talk);
    return this.bringIn(entries, stroke, beside);
  }

  #follow(id: string, talk: Talk): void {
    const before = this.get(id);
    if (before) this.#rewordings.follow(before, talk);
  }
}
