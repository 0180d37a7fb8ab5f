/** What the page of keeping does: save everything, bring back, take from a backup, decide a clash. */
import { withMine, type Point } from '../case/merge.ts';
import { rawOf } from '../case/file.ts';
import { parseRaw } from '../case/parse.ts';
import { OWN_PREFIX } from '../atlas/ownId.ts';
import type { Binned, Clashed } from './aside.svelte.ts';
import { aside, backups, desk, library, talks } from './app.svelte.ts';
import { backupName } from './backups.svelte.ts';
import { saveBlob } from './download.ts';
import { newId } from './ids.ts';
import { believed, takenOf, type Preview, type PreviewLine, type Take } from './preview.ts';

/** Hands a backup of everything to the browser to be saved, encrypted where a passphrase is given. */
export async function saveEverything(now = new Date(), passphrase?: string): Promise<void> {
  const bytes = await backups.bytes(now);
  if (passphrase === undefined)
    saveBlob(backupName(now), new Blob([new Uint8Array(bytes)], { type: 'application/json' }));
  else {
    const { closeEnvelope } = await import('../store/envelope.ts');
    const sealed = await closeEnvelope(new TextDecoder().decode(bytes), passphrase);
    saveBlob(`${backupName(now)}.age`, new Blob([sealed], { type: 'application/octet-stream' }));
  }
  await backups.made(now.getTime());
}

/** The name of what lies in the bin; undefined where it cannot be read. */
export const binnedName = (item: Binned): string | undefined => believed(item, library.known)?.name;

/** Brings something back out of the bin; false where it cannot be read. */
export async function bringBack(item: Binned): Promise<boolean> {
  const entry = believed(item, library.known);
  if (!entry) return false;
  const { id } = entry;
  if (entry.table === 'cases') desk.takeIn([{ id, record: entry.value }], 'brought-back');
  else if (entry.table === 'own') await library.takeIn([entry.value]);
  else talks.takeIn([entry.value]);
  return true;
}

/** Takes what was chosen of a backup; answers with how many entries that was. */
export async function takeFrom(
  { lines }: Preview,
  take: (line: PreviewLine) => Take,
): Promise<number> {
  const taken = takenOf(lines, take, (table) =>
    table === 'cases' ? newId() : table === 'own' ? `${OWN_PREFIX}${newId()}` : `talk-${newId()}`,
  );
  await library.takeIn(taken.own); // first: a record may hold findings on a reflex of one's own
  if (taken.children.length > 0) desk.takeIn(taken.children, 'backup-taken');
  talks.takeIn(taken.talks);
  return taken.children.length + taken.own.length + taken.talks.length;
}

/** Settles a clash with the points on which the second saved is right; false where that cannot be. */
export async function decide(clash: Clashed, mine: readonly Point[]): Promise<boolean> {
  const kept = desk.shelf.find(({ id }) => id === clash.child);
  if (kept && mine.length > 0) {
    const parsed = parseRaw(withMine(rawOf(kept.record), mine), library.known);
    if (!parsed.ok) return false;
    desk.takeIn([{ id: kept.id, record: parsed.value }], 'clash-decided');
    await desk.written; // the choice is kept before the question goes
  }
  await aside.decided(clash.row);
  return true;
}
