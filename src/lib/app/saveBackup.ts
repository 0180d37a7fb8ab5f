/** Everything saved to a file, from whatever page. */
import { backupBytes } from '../store/backupFile.ts';
import { backups } from './app.svelte.ts';
import { backupName } from '../backup/backups.svelte.ts';
import { saveBlob } from '../platform/download.ts';

/** Hands a backup of everything to the browser to be saved, encrypted where a passphrase is given. */
export async function saveEverything(now = new Date(), passphrase?: string): Promise<void> {
  const bytes = backupBytes(backups.everything(now));
  if (passphrase === undefined)
    saveBlob(backupName(now), new Blob([bytes], { type: 'application/json' }));
  else {
    const { closedWith } = await import('../exchange/worker/envelopes.ts');
    const sealed = await closedWith(new Blob([bytes]), passphrase);
    saveBlob(`${backupName(now)}.age`, new Blob([sealed], { type: 'application/octet-stream' }));
  }
  await backups.made(now.getTime());
}
