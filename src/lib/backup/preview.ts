/** What a backup holds, laid beside what is here: new, changed, the same; and what is chosen of it. */
import type { OwnEntry } from '../atlas/own.ts';
import type { Backup, BackupItem } from '../store/backupFile.ts';
import type { Change } from '../store/rows.ts';
import type { Kept } from '../store/store.ts';
import { binRow } from '../repository/trashRow.ts';
import type { BelievedItem } from './parseStored.ts';
import type { Desk } from '../repository/cases.svelte.ts';
import { newStroke } from '../platform/history.svelte.ts';
import type { Library } from '../repository/library.svelte.ts';
import type { OwnTalk, Talks } from '../repository/talks.svelte.ts';

/** An entry of a backup as it is believed: parsed, and written anew. */
export type Believed =
  | BelievedItem
  /** What the browser keeps beside the records; its name is said by its id. */
  | { table: 'small'; id: string; name: string; text: string };

/** Where something small is kept: what is there as text, what is believed of a text, and taking one in. */
export interface SmallPlace {
  readonly text: string | undefined;
  understood(text: string): string | undefined;
  takeIn(text: string, did: 'brought-back', stroke?: number): void;
}

/** What is to be done with an entry. `mine`: nothing. `both`: theirs comes in under a name of its own. */
export type Take = 'mine' | 'theirs' | 'both';

export type Compared = 'new' | 'changed' | 'same';

export interface PreviewLine {
  compared: Compared;
  entry: Believed;
}

export interface Preview {
  lines: readonly PreviewLine[];
  /** Ids of what is not understood: it is left out. */
  unread: readonly string[];
}

const comparedTo = (here: string | undefined, text: string): Compared =>
  here === undefined ? 'new' : here === text ? 'same' : 'changed';

/** What is here: the texts of each table by id, and the places of what is small by name. */
export interface Here {
  texts: Readonly<Record<BackupItem['table'], Pick<ReadonlyMap<string, string>, 'get'>>>;
  small: Readonly<Record<string, SmallPlace>>;
}

/** Entries laid beside what is here, as they come. */
export class Laying {
  readonly #here: Here;
  readonly #lines: PreviewLine[] = [];
  readonly #unread: string[] = [];

  constructor(here: Here) {
    this.#here = here;
  }

  add(entries: readonly BelievedItem[], unread: readonly string[]): void {
    for (const entry of entries) {
      const compared = comparedTo(this.#here.texts[entry.table].get(entry.id), entry.text);
      this.#lines.push({ compared, entry });
    }
    this.#unread.push(...unread);
  }

  /** What the browser keeps beside the records, by name. */
  addSmall(small: Backup['small']): void {
    for (const [id, given] of Object.entries(small)) {
      const place = Object.hasOwn(this.#here.small, id) ? this.#here.small[id] : undefined;
      const text = place?.understood(given);
      if (!place || text === undefined) this.#unread.push(id);
      else
        this.#lines.push({
          compared: comparedTo(place.text, text),
          entry: { table: 'small', id, name: id, text },
        });
    }
  }

  get preview(): Preview {
    return { lines: this.#lines, unread: this.#unread };
  }
}

export interface Taken {
  children: Kept[];
  own: OwnEntry[];
  talks: OwnTalk[];
  small: { id: string; text: string }[];
  /** Rows of the bin for what a table loses by it, by table. */
  over: Record<BackupItem['table'], Change[]>;
}

/**
 * What comes in of what is chosen; what is taken beside what is here gets an id of its own, and what is
 * gone over is to lie in the bin as it is.
 */
export function takenOf(
  lines: readonly PreviewLine[],
  take: (line: PreviewLine) => Take,
  newIdOf: (table: Believed['table']) => string,
  here: Here['texts'],
): Taken {
  const over = { cases: [], own: [], talks: [] };
  const taken: Taken = { children: [], own: [], talks: [], small: [], over };
  for (const line of lines) {
    const how = line.compared === 'same' ? 'mine' : take(line);
    if (how === 'mine') continue;
    const { entry } = line;
    const id = how === 'both' && line.compared === 'changed' ? newIdOf(entry.table) : entry.id;
    const text = entry.table !== 'small' && id === entry.id && here[entry.table].get(id);
    if (entry.table !== 'small' && text)
      taken.over[entry.table].push(binRow({ table: entry.table, id, text }));
    if (entry.table === 'cases') taken.children.push({ id, record: entry.value });
    else if (entry.table === 'own') taken.own.push({ ...entry.value, id });
    else if (entry.table === 'talks') taken.talks.push({ ...entry.value, id });
    else taken.small.push({ id: entry.id, text: entry.text }); // there is one place for it
  }
  return taken;
}

/** Where a backup goes. */
export interface Places {
  library: Pick<Library, 'takeIn'>;
  desk: Pick<Desk, 'takeIn'>;
  talks: Pick<Talks, 'takeIn'>;
  small: Readonly<Record<string, SmallPlace>>;
}

/**
 * Takes in what was chosen, all of it in one stroke and before anything else can happen, so that a page
 * that is left at once has all of it or nothing; answers with how many entries that was, none where the
 * store is of a newer Tidemark. What is replaced lies in the bin by the same write, so that nothing is
 * replaced without its copy. What reads one's own is made ready before.
 */
export function takeInto({ library, desk, talks, small }: Places, taken: Taken): number {
  const stroke = newStroke();
  const { own, children, over } = taken;
  // first: a record may hold findings on a reflex of one's own
  if (!library.takeIn(own, stroke, over.own)) return 0;
  if (children.length > 0) desk.takeIn(children, 'backup-taken', stroke, over.cases);
  talks.takeIn(taken.talks, stroke, over.talks);
  for (const { id, text } of taken.small) small[id]?.takeIn(text, 'brought-back', stroke);
  return own.length + children.length + taken.talks.length + taken.small.length;
}
