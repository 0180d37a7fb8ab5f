/** A file that was given to the page, from its first byte to what became of it. */
import { incoming, underway } from './app.svelte.ts';
import type { Received } from '../exchange/incoming.svelte.ts';
import { opened } from '../exchange/openedFile.svelte.ts';

/** Opens a file by what is in it; undefined where it is encrypted and was left closed. */
export const receiveFile = (file: File): Promise<Received | undefined> =>
  underway.during('file', async () => {
    const plain = await opened(file);
    return plain && incoming.receive(plain);
  });
