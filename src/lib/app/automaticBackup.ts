/** Backups by themselves. It stands apart from safe.ts, which only the page of keeping needs at once. */
import { backups } from './app.svelte.ts';

/** How long after a change a backup is written to the chosen folder, so that many make one. */
const SETTLED_MS = 20_000;

/** Where a folder is chosen, a backup goes there a little after each change; the answer stops that. */
export function backUp(): (() => void) | undefined {
  if (backups.folderState !== 'open' || backups.changed === 0) return undefined;
  const timer = setTimeout(() => void backups.intoFolder(new Date()), SETTLED_MS);
  return () => clearTimeout(timer);
}
