/** The mappings of this page, loaded where a sheet is looked through or a backup taken. */
import { small, storage } from './app.svelte.ts';
import { newMappings } from '../exchange/mappings.ts';
import { SHEETS } from '../platform/storageKeys.ts';
import { joinUndo } from '../platform/undoing.ts';

export const mappings = newMappings(storage);
small[SHEETS] = () => mappings.text;
joinUndo(mappings);
