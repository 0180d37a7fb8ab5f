/** What a backup or the bin holds, as it is believed: through the parser of its kind, and written anew. */
import type { Atlas } from '../atlas/atlas.ts';
import type { OwnEntry } from '../atlas/own.ts';
import type { Case } from '../case/case.ts';
import { parseCaseText } from '../case/file.ts';
import { caseText } from '../case/raw.ts';
import { parseTalkText, talkText } from '../lecture/talkFile.ts';
import type { BackupItem } from '../store/backupFile.ts';
import { ownRow, readOwnRow } from '../store/own.ts';
import type { OwnTalk } from '../repository/talks.svelte.ts';

/** An entry that was read, by the table it belongs to. */
export type BelievedItem =
  | { table: 'cases'; id: string; name: string; text: string; value: Case }
  | { table: 'own'; id: string; name: string; text: string; value: OwnEntry }
  | { table: 'talks'; id: string; name: string; text: string; value: OwnTalk };

/** An entry's text through the parser of its kind; undefined when it is refused. */
export function believed({ table, id, text }: BackupItem, atlas: Atlas): BelievedItem | undefined {
  if (table === 'cases') {
    const parsed = parseCaseText(text, atlas, id);
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
