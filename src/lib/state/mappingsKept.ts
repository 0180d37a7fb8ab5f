/** The mappings of this page, loaded where a sheet is looked through or a backup taken. */
import { small, storage } from './app.svelte.ts';
import { newMappings } from './mappings.ts';
import { SHEETS } from './names.ts';
import { joinUndo } from './undoing.ts';

export const mappings = newMappings(storage);
small[SHEETS] = () => mappings.text;
joinUndo(mappings);
