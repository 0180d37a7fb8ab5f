/** What a backup holds, laid beside what is here: new, changed, the same; and what is chosen of it. */
import type { OwnEntry } from '../atlas/own.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Case } from '../case/case.ts';
import { caseText, parseCaseText } from '../case/file.ts';
import { parseTalkText, talkText } from '../lecture/talkFile.ts';
import type { BackupItem } from '../store/backupFile.ts';
import { ownRow, readOwnRow } from '../store/own.ts';
import type { Kept } from '../store/store.ts';
import type { OwnTalk } from './talks.svelte.ts';

/** An entry of a backup as it is believed: parsed, and written anew. */
export type Believed =
  | { table: 'cases'; id: string; name: string; text: string; value: Case }
  | { table: 'own'; id: string; name: string; text: string; value: OwnEntry }
  | { table: 'talks'; id: string; name: string; text: string; value: OwnTalk };

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

/** An entry's text through the parser of its kind; undefined when it is refused. */
export function believed({ table, id, text }: BackupItem, atlas: Atlas): Believed | undefined {
  if (table === 'cases') {
    const parsed = parseCaseText(text, atlas);
    if (!parsed.ok) return undefined;
    const value = parsed.value;
    return { table, id, name: value.child.label, text: caseText(value), value };
  }
  if (table === 'own') {
    const value = readOwnRow({ id, text });
    return value && { table, id, name: value.name, text: ownRow(value).text, value };
  }
  const parsed = parseTalkText(text);
  if (!parsed.ok) return undefined;
  const value = { id, talk: parsed.talk };
  return { table, id, name: parsed.talk.title, text: talkText(parsed.talk), value };
}

/** Lays the entries of a backup beside the texts that are here, by table and id. */
export function previewOf(
  items: readonly BackupItem[],
  here: Readonly<Record<BackupItem['table'], ReadonlyMap<string, string>>>,
  atlas: Atlas,
): Preview {
  const lines: PreviewLine[] = [];
  const unread: string[] = [];
  for (const item of items) {
    const entry = believed(item, atlas);
    if (!entry) {
      unread.push(item.id);
      continue;
    }
    const text = here[item.table].get(item.id);
    const compared = text === undefined ? 'new' : text === entry.text ? 'same' : 'changed';
    lines.push({ compared, entry });
  }
  return { lines, unread };
}

export interface Taken {
  children: Kept[];
  own: OwnEntry[];
  talks: OwnTalk[];
}

/** What comes in of what is chosen; what is taken beside what is here gets an id of its own. */
export function takenOf(
  lines: readonly PreviewLine[],
  take: (line: PreviewLine) => Take,
  newIdOf: (table: Believed['table']) => string,
): Taken {
  const taken: Taken = { children: [], own: [], talks: [] };
  for (const line of lines) {
    const how = line.compared === 'same' ? 'mine' : take(line);
    if (how === 'mine') continue;
    const { entry } = line;
    const id = how === 'both' && line.compared === 'changed' ? newIdOf(entry.table) : entry.id;
    if (entry.table === 'cases') taken.children.push({ id, record: entry.value });
    else if (entry.table === 'own') taken.own.push({ ...entry.value, id });
    else taken.talks.push({ ...entry.value, id });
  }
  return taken;
}
